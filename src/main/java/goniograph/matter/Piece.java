package goniograph.matter;

import goniograph.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A piece of text: a title, a paragraph or one list item.
 *
 * @param kind what it is
 * @param number its number among the numbered steps of its section, from 1; 0 if it is none
 * @param text its source text, without the mark of a list item or heading
 * @param parts the same as words, slots, claims and stress
 * @param at its place: exactly where {@code text} stands in the file
 */
public record Piece(Kind kind, int number, String text, List<Inline> parts, Span at) {
  /** What a piece is. */
  public enum Kind {
    TITLE,
    PARAGRAPH,
    STEP,
    BULLET
  }

  public Piece {
    parts = List.copyOf(parts);
  }

  /** Its slots in order. */
  public List<Inline.Slot> slots() {
    return all(Inline.Slot.class);
  }

  /** Its claim marks in order. */
  public List<Inline.Claim> claims() {
    return all(Inline.Claim.class);
  }

  /** The statement id, if the piece is a care line: {@code {s-…}} alone. */
  public Optional<String> careLine() {
    return parts.size() == 1 && parts.get(0) instanceof Inline.Slot slot && isCare(slot)
        ? Optional.of(slot.name())
        : Optional.empty();
  }

  /** Its words with slots in braces, without claim marks and stress. */
  public String plain() {
    return plain(parts).replaceAll("\\s+", " ").strip();
  }

  private static boolean isCare(Inline.Slot slot) {
    return slot.name().startsWith("s-");
  }

  private <T extends Inline> List<T> all(Class<T> kind) {
    return parts.stream().flatMap(Piece::flat).filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Stream<Inline> flat(Inline part) {
    return part instanceof Inline.Stress stress
        ? stress.parts().stream().flatMap(Piece::flat)
        : Stream.of(part);
  }

  private static String plain(List<Inline> parts) {
    return parts.stream().flatMap(Piece::flat).map(Piece::word).collect(Collectors.joining());
  }

  private static String word(Inline part) {
    if (part instanceof Inline.Words words) {
      return words.text();
    }
    return part instanceof Inline.Slot slot ? "{" + slot.name() + "}" : "";
  }
}
