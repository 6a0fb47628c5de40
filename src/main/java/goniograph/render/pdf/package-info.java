/**
 * Floor 8, part of rendering: a complete XHTML page set as a tagged PDF (PDF/UA-1 and PDF/A-2a),
 * every letter shaped by the {@code type} room, every block measured on its page. Same page and
 * same facts, same bytes. Opens no connection and no file; a character no font shows is reported,
 * not drawn.
 */
@NullMarked
package goniograph.render.pdf;

import org.jspecify.annotations.NullMarked;
