/**
 * Floor 10: what others read: findings as text and as a page for people, as JSON and SARIF for
 * programs, front matter as JSON Schema; and what others wrote: notes, sorted into blanks. Every
 * form is made from values alone, the same values give the same bytes, and nothing here opens a
 * file.
 */
@NullMarked
package goniograph.exchange;

import org.jspecify.annotations.NullMarked;
