/**
 * Floor 7: an entry in one language, side, step, layout and paper as a page model: semantic blocks
 * with finished words, no markup. HTML and PDF are made from it and from nothing else.
 */
@NullMarked
package goniograph.sheet;

import org.jspecify.annotations.NullMarked;
