/**
 * Floor 5: a solved scene becomes a drawing, and the drawing SVG, at the size it is printed: every
 * line weight is in mm on paper and nothing is scaled afterwards.
 *
 * <p>Lengths of the scene are body heights, lengths of the drawing are mm with y down. The same
 * scene and options give the same bytes.
 */
@NullMarked
package goniograph.figure;

import org.jspecify.annotations.NullMarked;
