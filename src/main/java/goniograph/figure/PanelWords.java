package goniograph.figure;

import java.util.function.IntFunction;

/**
 * Numbers and order of the panels, as the page's language has them.
 *
 * @param number a panel's number in the page's digits; "" where the panels carry none
 * @param notLikeThis what stands at the wrong way
 * @param rightToLeft true where the first of several panels stands on the right
 */
public record PanelWords(IntFunction<String> number, String notLikeThis, boolean rightToLeft) {
  /** Panels from left to right without numbers or words. */
  public static final PanelWords NONE = new PanelWords(number -> "", "", false);
}
