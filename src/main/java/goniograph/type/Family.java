package goniograph.type;

import java.util.Optional;

/** The font families that ship with Goniograph, all under the SIL Open Font License 1.1. */
public enum Family {
  LATIN("Noto Sans", "NotoSans"),
  ARABIC("Noto Sans Arabic", "NotoSansArabic"),
  DEVANAGARI("Noto Sans Devanagari", "NotoSansDevanagari");

  private final String cssName;
  private final String fileName;

  Family(String cssName, String fileName) {
    this.cssName = cssName;
    this.fileName = fileName;
  }

  /** The name used in style sheets. */
  public String cssName() {
    return cssName;
  }

  String fileName() {
    return fileName;
  }

  /** The family a style sheet names, letter case aside; empty for a family we do not carry. */
  public static Optional<Family> named(String cssName) {
    for (Family family : values()) {
      if (family.cssName.equalsIgnoreCase(cssName.strip())) {
        return Optional.of(family);
      }
    }
    return Optional.empty();
  }
}
