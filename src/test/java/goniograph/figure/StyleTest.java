package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.color.ColorSpace;
import org.junit.jupiter.api.Test;

/**
 * Contrast by the formula of WCAG 2.2 (relative luminance, contrast ratio); the ratios are those
 * that the figure method publishes for its palette, section 10.
 */
class StyleTest {
  @Test
  void thePaletteHasThePublishedContrasts() {
    String white = "#FFFFFF";
    assertEquals(16.5, contrast(Colours.LINE, white), .06);
    assertEquals(13.6, contrast(Colours.LINE, Colours.BODY), .06);
    assertEquals(7.1, contrast(Colours.LINE, Colours.SHIRT), .06);
    assertEquals(6.7, contrast(Colours.ACCENT, white), .06);
    assertEquals(5.5, contrast(Colours.ACCENT, Colours.BODY), .06);
    assertEquals(8.7, contrast(Colours.ACCENT_LINE, white), .06);
    assertEquals(6.3, contrast(Colours.FAR_LINE, white), .06);
    assertEquals(5.7, contrast(Colours.FAR_LINE, Style.COLOUR.fill(Tone.SKIN, Role.FAR)), .12);
  }

  @Test
  void theWorkingOutlineStandsOutFromItsOwnLightFill() {
    assertTrue(contrast(Colours.ACCENT_LINE, Colours.MOVING_LIGHT) >= 4.8);
  }

  /** CIE lightness from luminance; 15 apart keeps greys apart (figure method, section 16). */
  @Test
  void clothesAndSkinStayApartInGrey() {
    double trousers = lightness(Colours.TROUSERS);
    double shirt = lightness(Colours.SHIRT);
    double body = lightness(Colours.BODY);
    assertTrue(shirt - trousers >= 15 && body - shirt >= 15);
    assertTrue(trousers - lightness(Colours.HAIR) >= 15);
  }

  /**
   * The lightness that the figure method states for its palette, by the colour conversion of the
   * Java platform (profile connection space, D50), not by our formula.
   */
  @Test
  void thePaletteHasTheStatedLightness() {
    assertEquals(12, platformLightness(Colours.LINE), 1.5);
    assertEquals(41, platformLightness(Colours.FAR_LINE), 1.5);
    assertEquals(93, platformLightness(Colours.BODY), 1.5);
    assertEquals(70, platformLightness(Colours.SHIRT), 1.5);
    assertEquals(39, platformLightness(Colours.TROUSERS), 1.5);
    assertEquals(19, platformLightness(Colours.HAIR), 1.5);
    assertEquals(39, platformLightness(Colours.ACCENT), 3);
    assertEquals(32, platformLightness(Colours.ACCENT_LINE), 3);
    assertEquals(82, platformLightness(Colours.MOVING_LIGHT), 3);
    assertEquals(66, platformLightness(Colours.MOVING_DARK), 3);
    assertEquals(91, platformLightness(Colours.SUPPORT), 1.5);
    assertEquals(81, platformLightness(Colours.SUPPORT_SIDE), 1.5);
  }

  /** Neighbouring tones without a line between them, and the working limb against the resting. */
  @Test
  void tonesThatMeetDifferInGreyByThePlatformsReckoning() {
    assertTrue(apart(Colours.SHIRT, Colours.TROUSERS) >= 15);
    assertTrue(apart(Colours.BODY, Colours.SHIRT) >= 15);
    assertTrue(apart(Colours.BODY, Colours.HAIR) >= 15);
    assertTrue(apart(Colours.MOVING_LIGHT, Colours.MOVING_DARK) >= 15);
    assertTrue(apart(Colours.MOVING_DARK, Colours.TROUSERS) >= 15);
    assertTrue(apart(Colours.ACCENT, "#FFFFFF") >= 45);
  }

  private static double apart(String a, String b) {
    return Math.abs(platformLightness(a) - platformLightness(b));
  }

  private static double platformLightness(String colour) {
    float[] rgb = Color.decode(colour).getRGBColorComponents(null);
    float[] xyz = ColorSpace.getInstance(ColorSpace.CS_CIEXYZ).fromRGB(rgb);
    return 116 * Math.cbrt(xyz[1]) - 16;
  }

  @Test
  void inkIsBlackAndWhite() {
    for (Tone tone : Tone.values()) {
      for (Role role : Role.values()) {
        assertTrue(Style.INK.fill(tone, role).matches("#000000|#FFFFFF"));
        assertEquals("#000000", Style.INK.line(role));
      }
    }
  }

  private static double contrast(String a, String b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + .05) / (Math.min(la, lb) + .05);
  }

  private static double lightness(String colour) {
    return 116 * Math.cbrt(luminance(colour)) - 16;
  }

  private static double luminance(String colour) {
    int rgb = Integer.parseInt(colour.substring(1), 16);
    return .2126 * linear(rgb >> 16 & 255)
        + .7152 * linear(rgb >> 8 & 255)
        + .0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= .04045 ? c / 12.92 : Math.pow((c + .055) / 1.055, 2.4);
  }
}
