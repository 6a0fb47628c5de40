/**
 * Floor 10: what others read: findings as text for people and as JSON for programs. Every form is
 * made from values alone, the same values give the same bytes, and nothing here opens a file.
 */
@NullMarked
package goniograph.exchange;

import org.jspecify.annotations.NullMarked;
