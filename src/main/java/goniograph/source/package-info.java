/**
 * Floor 0: files behind one interface (the disk and its twin in memory), places in them, digests,
 * and the day that counts as today. The only room that opens, writes or renames a file; nothing
 * above it reads a clock.
 */
@NullMarked
package goniograph.source;

import org.jspecify.annotations.NullMarked;
