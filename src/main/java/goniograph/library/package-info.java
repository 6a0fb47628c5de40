/**
 * Floor 4: the library as immutable values: exercises, advice topics and programmes with their
 * language versions, statements, phrases, rule tables, stock, sources, the clinic. Every value
 * keeps the place it was read from. Reading never throws on content: a broken entry gives findings
 * and stands aside, the others are read. Whether ids that are named exist is judged above; here are
 * the look-ups.
 */
@NullMarked
package goniograph.library;

import org.jspecify.annotations.NullMarked;
