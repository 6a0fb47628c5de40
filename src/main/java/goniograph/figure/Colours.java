package goniograph.figure;

import java.util.Locale;

/** The palette: chosen so that greys stay apart and every line stands out from what it bounds. */
final class Colours {
  static final String LINE = "#16202B";
  static final String FAR_LINE = "#55616C";
  static final String BODY = "#F4E8D8";
  static final String SHIRT = "#7FB2C6";
  static final String TROUSERS = "#3F6079";
  static final String CLOTH = "#8C7A99";
  static final String HAIR = "#2B2F36";
  static final String ACCENT = "#A8330A";
  static final String ACCENT_LINE = "#8A2A06";
  static final String MOVING_LIGHT = "#F9C48A";
  static final String MOVING_DARK = "#E08B42";
  static final String SUPPORT = "#E3E7EA";
  static final String SUPPORT_TOP = "#F1F3F5";
  static final String SUPPORT_SIDE = "#C3CBD1";
  static final String FLOOR = "#EDF0F2";

  private Colours() {}

  /** Mixed with white: 0 as it is, 1 white. */
  static String lighter(String colour, double part) {
    int rgb = Integer.parseInt(colour.substring(1), 16);
    return String.format(
        Locale.ROOT,
        "#%02X%02X%02X",
        mixed(rgb >> 16 & 255, part),
        mixed(rgb >> 8 & 255, part),
        mixed(rgb & 255, part));
  }

  private static int mixed(int channel, double part) {
    return (int) Math.round(channel + (255 - channel) * part);
  }
}
