/**
 * Floor 8: a page model becomes HTML for the screen and a tagged PDF for paper. A layout is one
 * template, one style and one line of registration; what does not fit is reported, never shrunk.
 */
@NullMarked
package goniograph.render;

import org.jspecify.annotations.NullMarked;
