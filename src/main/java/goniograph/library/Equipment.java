package goniograph.library;

import goniograph.matter.Located;
import java.util.Optional;

/**
 * A thing that is needed; all three are phrase ids.
 *
 * @param id the thing
 * @param instead what may be taken in its place
 * @param check what to look at before use
 */
public record Equipment(
    Located<String> id, Optional<Located<String>> instead, Optional<Located<String>> check) {}
