package goniograph.library;

import goniograph.matter.Body;
import goniograph.source.SourceFile;

/**
 * The text of an entry in one language.
 *
 * @param language its language tag, from the file's name
 * @param file the file it was read from
 * @param body its text
 */
public record Version(String language, SourceFile file, Body body) {}
