package goniograph.render;

/** Text into markup, for the few places that templates do not write. */
final class Markup {
  private Markup() {}

  /** Text safe between double quotes. */
  static String attribute(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
