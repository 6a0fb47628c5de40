/**
 * Floor 1: a finding as a value: which rule, how grave, where, what, why and how to mend it.
 * Findings know nothing of how they are printed.
 */
@NullMarked
package goniograph.finding;

import org.jspecify.annotations.NullMarked;
