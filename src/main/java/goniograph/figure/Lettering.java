package goniograph.figure;

import goniograph.type.TextOutline;

/** Sets words as outlines, so that whatever shows a drawing needs no font. */
@FunctionalInterface
public interface Lettering {
  /**
   * The outline of one line of text.
   *
   * @param size the font size in mm
   */
  TextOutline set(String text, double size);
}
