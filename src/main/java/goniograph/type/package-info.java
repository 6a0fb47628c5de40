/**
 * Floor 2: the fonts of the sheets, which of them shows a character, text shaped into clusters of
 * placed glyphs, and text as outlines. Immutable once loaded and safe for any number of threads;
 * reads nothing but its own fonts on the class path, and never draws a missing glyph: it names the
 * character instead.
 */
@NullMarked
package goniograph.type;

import org.jspecify.annotations.NullMarked;
