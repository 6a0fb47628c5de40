package goniograph.render.pdf;

import com.ibm.icu.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/**
 * Text in the order in which it is seen, by the bidirectional algorithm (UAX 9). Extractors write
 * right-to-left lines with direction controls of their own; what they say is compared by what it
 * looks like once pasted.
 */
final class Visual {
  private Visual() {}

  static String line(String text, boolean rightToLeft) {
    Bidi bidi = new Bidi(text, rightToLeft ? Bidi.RTL : Bidi.LTR);
    return bidi.writeReordered(Bidi.DO_MIRRORING | Bidi.REMOVE_BIDI_CONTROLS);
  }

  static String lines(String text, boolean rightToLeft) {
    List<String> lines = new ArrayList<>();
    text.lines().forEach(line -> lines.add(line(line, rightToLeft)));
    return String.join("\n", lines);
  }

  static List<String> words(String text) {
    return List.of(text.strip().split("\\s+"));
  }
}
