/**
 * Floor 10: load, check, draw, lay out, write. Turns what did not fit into findings. A file it
 * writes is whole or absent; the same library on the same day gives the same bytes.
 */
@NullMarked
package goniograph.build;

import org.jspecify.annotations.NullMarked;
