/**
 * Floor 6: what is checked, by whom it may be accepted, and which sentences an entry must carry.
 * Rules are values with documentation and examples; checking is a pure function of the library, the
 * solved poses and today. Bad content gives findings, never an exception.
 */
@NullMarked
package goniograph.check;

import org.jspecify.annotations.NullMarked;
