package goniograph.render.pdf;

import com.openhtmltopdf.bidi.BidiReorderer;

/**
 * Tells the text renderer which strings are right-to-left runs: prefixes them with a noncharacter
 * and leaves their text alone. Shaping is the renderer's own business.
 */
final class RightToLeftMark implements BidiReorderer {
  /** A Unicode noncharacter: it cannot be part of any text. */
  static final char MARK = '\uFDD0';

  @Override
  public String reorderRTLTextToLTR(String text) {
    return MARK + text;
  }

  @Override
  public String shapeText(String text) {
    return text;
  }

  @Override
  public String deshapeText(String text) {
    return text;
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }
}
