package goniograph.translation;

import goniograph.matter.Inline;
import goniograph.matter.Piece;
import goniograph.source.Digest;
import java.text.Normalizer;
import java.util.List;

/**
 * What counts of a piece: its words in Unicode normal form C (UAX 15) with white space folded, its
 * slots by name, its claim marks and its emphasis. How emphasis or a word is spelt in Markdown, and
 * what number a slot stands for, does not count.
 */
public final class PieceDigest {
  private PieceDigest() {}

  /** SHA-256 of what counts. */
  public static String of(Piece piece) {
    return Digest.of(canonical(piece));
  }

  static String canonical(Piece piece) {
    StringBuilder text = new StringBuilder();
    append(piece.parts(), text);
    String normal = Normalizer.normalize(text, Normalizer.Form.NFC);
    return normal.replaceAll("\\s+", " ").strip();
  }

  private static void append(List<Inline> parts, StringBuilder into) {
    for (Inline part : parts) {
      if (part instanceof Inline.Words words) {
        into.append(words.text().replaceAll("[\\\\*{}\\[\\]]", "\\\\$0"));
      } else if (part instanceof Inline.Slot slot) {
        into.append('{').append(slot.name()).append('}');
      } else if (part instanceof Inline.Claim claim) {
        into.append('[').append(claim.id()).append(']');
      } else if (part instanceof Inline.Stress stress) {
        String mark = stress.strong() ? "**" : "*";
        into.append(mark);
        append(stress.parts(), into);
        into.append(mark);
      }
    }
  }
}
