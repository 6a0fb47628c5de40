/**
 * Floor 5: language versions held against their source, piece by piece: which are fresh, stale,
 * missing or unrecorded, and which slots a version lost, doubled or invented. Pure functions of
 * texts and records; who recorded what, and whether it is signed, is not known here.
 */
@NullMarked
package goniograph.translation;

import org.jspecify.annotations.NullMarked;
