/**
 * Floor 3: text to located trees: YAML front matter, Markdown bodies, pose files. Never throws on
 * what a file contains: a tree as far as it could be read, plus findings.
 */
@NullMarked
package goniograph.matter;

import org.jspecify.annotations.NullMarked;
