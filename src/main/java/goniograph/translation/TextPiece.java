package goniograph.translation;

import goniograph.matter.Body;
import goniograph.matter.Inline;
import goniograph.matter.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece with its home in the text.
 *
 * @param section key of its section; {@code title} for the title
 * @param number its number in the section, from 1
 * @param piece the piece
 * @param digest its digest
 */
public record TextPiece(String section, int number, Piece piece, String digest) {
  static final String TITLE = "title";

  /** All pieces of a text, in order. */
  public static List<TextPiece> of(Body body) {
    List<TextPiece> pieces = new ArrayList<>();
    body.title().ifPresent(title -> pieces.add(piece(TITLE, 1, title)));
    for (Body.Section section : body.sections()) {
      for (int i = 0; i < section.pieces().size(); i++) {
        pieces.add(piece(section.key().value(), i + 1, section.pieces().get(i)));
      }
    }
    return List.copyOf(pieces);
  }

  private static TextPiece piece(String section, int number, Piece piece) {
    return new TextPiece(section, number, piece, PieceDigest.of(piece));
  }

  /** Its name for people: {@code title}, {@code do 3}. */
  public String name() {
    return section.equals(TITLE) ? TITLE : section + " " + number;
  }

  /**
   * Whether it has words of its own, and not slots alone: only then there is something to
   * translate.
   */
  public boolean hasWords() {
    return piece.parts().stream().anyMatch(part -> !(part instanceof Inline.Slot) && !blank(part));
  }

  private static boolean blank(Inline part) {
    return part instanceof Inline.Words words && words.text().isBlank();
  }
}
