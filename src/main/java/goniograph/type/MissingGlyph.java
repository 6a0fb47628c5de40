package goniograph.type;

import java.util.Locale;
import java.util.Objects;

/**
 * A character that no font of ours can draw.
 *
 * @param codePoint the character
 * @param nearest the family that should have shown it: of the character's own script, else the
 *     first one asked
 */
public record MissingGlyph(int codePoint, Family nearest) {
  static MissingGlyph of(int codePoint, Family asked) {
    return new MissingGlyph(
        codePoint,
        switch (Character.UnicodeScript.of(codePoint)) {
          case ARABIC -> Family.ARABIC;
          case DEVANAGARI -> Family.DEVANAGARI;
          case LATIN, GREEK, CYRILLIC -> Family.LATIN;
          default -> asked;
        });
  }

  /** The character itself. */
  public String character() {
    return Character.toString(codePoint);
  }

  /** The Unicode notation, such as {@code U+2713}. */
  public String code() {
    return String.format(Locale.ROOT, "U+%04X", codePoint);
  }

  /** The character with its code and name, such as {@code `✓` (U+2713 CHECK MARK)}. */
  public String words() {
    return "`" + character() + "` (" + code() + " " + name() + ")";
  }

  /** The character's Unicode name. */
  public String name() {
    return Objects.requireNonNullElse(Character.getName(codePoint), "unassigned");
  }
}
