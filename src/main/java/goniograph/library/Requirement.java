package goniograph.library;

import goniograph.library.Vocabulary.Supervision;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One row of the table of required statements: if the entry has the property, the sheet carries the
 * statements and the entry handles the tags.
 *
 * @param rule the rule's name, shown as the reason
 * @param trigger what makes it fire: property words
 * @param statements statement ids that must be carried
 * @param tags precaution tags that must be handled
 * @param tagsUnlessType the type of exercise that need not handle them
 * @param supervision the least supervision
 * @param source id of a source, or {@code common-practice}
 * @param at where the row stands
 */
public record Requirement(
    Located<String> rule,
    Trigger trigger,
    List<Located<String>> statements,
    List<Located<String>> tags,
    Optional<Located<Type>> tagsUnlessType,
    Optional<Located<Supervision>> supervision,
    Located<String> source,
    Span at) {
  public Requirement {
    statements = List.copyOf(statements);
    tags = List.copyOf(tags);
  }
}
