package goniograph.render.pdf;

import goniograph.type.MissingGlyph;
import java.util.List;

/**
 * A page set as PDF.
 *
 * @param pdf the file's bytes; not copied
 * @param pages how many pages it has
 * @param blocks the measured blocks, in the order of the page's source
 * @param missing characters that no font shows, each once; the PDF leaves them out
 * @param warnings what the page asked for and could not be had: a refused address, a style the
 *     layout engine does not know, a drawing it could not read
 */
public record RenderedPdf(
    byte[] pdf,
    int pages,
    List<BlockMeasure> blocks,
    List<MissingGlyph> missing,
    List<String> warnings) {
  public RenderedPdf {
    blocks = List.copyOf(blocks);
    missing = List.copyOf(missing);
    warnings = List.copyOf(warnings);
  }
}
