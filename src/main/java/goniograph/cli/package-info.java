/**
 * Floor 12: the commands. One class a command; the only room that prints to the terminal or ends
 * the process.
 */
@NullMarked
package goniograph.cli;

import org.jspecify.annotations.NullMarked;
