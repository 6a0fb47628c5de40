package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.library.Vocabulary.Supervision;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One row of the table of required statements: if the exercise has the property, the sheet carries
 * the statements and the entry handles the tags.
 *
 * @param rule the rule's name, shown as the reason
 * @param when the property
 * @param numbers the limits the property is worked out with, in the base units s, cm, deg or plain
 * @param statements statement ids that must be carried
 * @param tags precaution tags that must be handled
 * @param tagsUnlessType the type of exercise that need not handle them
 * @param supervision the least supervision
 * @param source id of a source, or {@code common-practice}
 * @param at where the row stands
 */
public record Requirement(
    Located<String> rule,
    Located<String> when,
    Map<String, Bound> numbers,
    List<Located<String>> statements,
    List<Located<String>> tags,
    Optional<Located<Type>> tagsUnlessType,
    Optional<Located<Supervision>> supervision,
    Located<String> source,
    Span at) {
  public Requirement {
    numbers = Collections.unmodifiableMap(new TreeMap<>(numbers));
    statements = List.copyOf(statements);
    tags = List.copyOf(tags);
  }

  /** A limit with its unit, or a plain count. */
  public sealed interface Bound {
    /** With a unit. */
    record Amount(Quantity quantity) implements Bound {}

    /** Without. */
    record Count(int count) implements Bound {}

    /** The value in its base unit: s, kg, N, cm, deg or %. */
    default BigDecimal inBase() {
      return this instanceof Amount amount
          ? amount.quantity().inBase()
          : BigDecimal.valueOf(((Count) this).count());
    }
  }
}
