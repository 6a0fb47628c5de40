package goniograph.figure;

/** How a drawing is coloured. */
public enum Style {
  /** Black on white; the working limb hatched. For any printer and any photocopier. */
  INK,
  /** Flat colours that stay apart in grey. */
  COLOUR;

  /** White paper. */
  static final String PAPER = "#FFFFFF";

  private static final String BLACK = "#000000";

  /** The colour of a painted area. */
  String fill(Tone tone, Role role) {
    return this == INK ? inked(tone) : coloured(tone, role);
  }

  private static String inked(Tone tone) {
    return tone == Tone.HAIR || tone == Tone.SOLE ? BLACK : PAPER;
  }

  private static String coloured(Tone tone, Role role) {
    String colour = role == Role.MOVING ? moving(tone) : still(tone);
    return role == Role.FAR ? Colours.lighter(colour, .42) : colour;
  }

  private static String moving(Tone tone) {
    return switch (tone) {
      case SKIN, SHIRT, SHOE -> Colours.MOVING_LIGHT;
      case TROUSERS -> Colours.MOVING_DARK;
      default -> still(tone);
    };
  }

  private static String still(Tone tone) {
    return switch (tone) {
      case SKIN -> Colours.BODY;
      case SHIRT -> Colours.SHIRT;
      case TROUSERS -> Colours.TROUSERS;
      case SHOE -> PAPER;
      case SOLE -> Colours.FAR_LINE;
      case HAIR -> Colours.HAIR;
      case SUPPORT -> Colours.SUPPORT;
      case SUPPORT_TOP -> Colours.SUPPORT_TOP;
      case SUPPORT_SIDE -> Colours.SUPPORT_SIDE;
      case BAND -> Colours.ACCENT;
      case CLOTH -> Colours.CLOTH;
    };
  }

  /** The colour of a part's lines. */
  String line(Role role) {
    if (this == INK) {
      return BLACK;
    }
    return switch (role) {
      case NEAR, SUPPORT, PROP -> Colours.LINE;
      case FAR -> Colours.FAR_LINE;
      case MOVING -> Colours.ACCENT_LINE;
    };
  }

  /** The colour of arrows, arcs and their numbers. */
  String mark() {
    return this == INK ? BLACK : Colours.ACCENT;
  }

  /** The colour of the floor's line. */
  String floor() {
    return this == INK ? BLACK : Colours.FAR_LINE;
  }

  boolean hatched() {
    return this == INK;
  }
}
