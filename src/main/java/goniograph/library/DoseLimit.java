package goniograph.library;

import goniograph.library.Vocabulary.Aim;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.Optional;

/**
 * One row of the table of dose limits.
 *
 * @param type the type of exercise it is for; empty for any
 * @param field what is limited: the dotted key of a dose field, or {@code tempo} for the sum of its
 *     parts; a file may write the key's last word alone
 * @param limit outside is an error; at the limit is inside
 * @param warn outside asks for a second look
 * @param fromEffort the least effort for which it holds
 * @param aim the aim for which it holds
 * @param source id of a source, or {@code common-practice}
 * @param at where the row stands
 */
public record DoseLimit(
    Optional<Type> type,
    Located<String> field,
    Located<Precaution.Within> limit,
    Optional<Located<Precaution.Within>> warn,
    Optional<Integer> fromEffort,
    Optional<Aim> aim,
    Located<String> source,
    Span at) {}
