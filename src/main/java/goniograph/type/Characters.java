package goniograph.type;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;

/** What the Unicode standard says of a character, as far as setting text asks. */
final class Characters {
  private Characters() {}

  /** Never drawn and of no width: joiners, direction marks, controls (UAX 44). */
  static boolean isInvisible(int codePoint) {
    return Character.isISOControl(codePoint)
        || UCharacter.hasBinaryProperty(codePoint, UProperty.DEFAULT_IGNORABLE_CODE_POINT);
  }

  /** Stands on, under or inside the character before it, so never apart from it. */
  static boolean leansOnPrevious(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.NON_SPACING_MARK,
          Character.COMBINING_SPACING_MARK,
          Character.ENCLOSING_MARK,
          Character.FORMAT ->
          true;
      default -> false;
    };
  }

  /** Orders text but says nothing: marks, embeddings, overrides and isolates (UAX 9). */
  static boolean isDirectionControl(int codePoint) {
    return UCharacter.hasBinaryProperty(codePoint, UProperty.BIDI_CONTROL);
  }
}
