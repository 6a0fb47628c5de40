/**
 * Floor 2: one language: its tag, direction and digit set, its plural forms and phrases, its dates
 * and weekdays, its words that matter to a checker, its sentences, syllables and readability.
 *
 * <p>Rules of languages come from CLDR, the Unicode Common Locale Data Repository, by ICU. Nothing
 * here throws on content: a faulty pattern or a missing word is data.
 */
@NullMarked
package goniograph.language;

import org.jspecify.annotations.NullMarked;
