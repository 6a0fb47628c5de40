package goniograph.matter;

import goniograph.finding.Finding;
import goniograph.source.Span;

/** The finding about a file that is not UTF-8. */
final class Encoding {
  private Encoding() {}

  static Finding finding(Span at) {
    return Finding.error(
        "file-not-utf-8",
        at,
        "The file is not UTF-8 text: a character here was lost.",
        "Letters of other languages would be printed wrongly.",
        "Save the file with the encoding UTF-8 and type the character again.");
  }
}
