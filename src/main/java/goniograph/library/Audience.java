package goniograph.library;

import goniograph.library.Vocabulary.AgeGroup;
import java.util.Optional;

/**
 * For whom an entry is written.
 *
 * @param group the age group
 * @param age a child's age in years
 */
public record Audience(AgeGroup group, Optional<Integer> age) {}
