package goniograph.render;

import goniograph.type.MissingGlyph;
import java.util.List;

/**
 * A sheet set on paper.
 *
 * @param pdf the file's bytes; not copied
 * @param pages how many pages it has
 * @param overflows what does not fit
 * @param missing characters that no font shows
 * @param warnings what the layout engine could not do: a fault of a template or drawing
 */
public record Paper(
    byte[] pdf,
    int pages,
    List<Overflow> overflows,
    List<MissingGlyph> missing,
    List<String> warnings) {
  public Paper {
    overflows = List.copyOf(overflows);
    missing = List.copyOf(missing);
    warnings = List.copyOf(warnings);
  }
}
