package goniograph.library;

import goniograph.dose.Counts;
import goniograph.dose.Measure;
import goniograph.library.Vocabulary.Supervision;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the table of required statements. */
final class RuleReader {
  private RuleReader() {}

  static Optional<Requirement> requirement(Form form) {
    var rule = form.required("rule", "breathe-on-effort").as(Spellings.ID_WORD);
    var when = form.required("when", "held-effort").as(Spellings.ID_WORD);
    Map<String, Requirement.Bound> numbers = numbers(form);
    var statements = form.optional("statements").list(Spellings.ID_WORD);
    var tags = form.optional("tags").list(Spellings.ID_WORD);
    var unless = form.optional("tags_unless_type").as(Spellings.oneOf(Type.class));
    var supervision = form.optional("supervision").as(Spellings.oneOf(Supervision.class));
    var source = form.required("source", "common-practice").as(Spellings.ID_WORD);
    if (rule.isEmpty() || when.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Requirement(
            rule.get(),
            when.get(),
            numbers,
            statements,
            tags,
            unless,
            supervision,
            source.get(),
            form.at()));
  }

  private static Map<String, Requirement.Bound> numbers(Form form) {
    Map<String, Requirement.Bound> numbers = new LinkedHashMap<>();
    form.optional("numbers")
        .form("numbers", Form::entries)
        .map(Located::value)
        .orElse(List.of())
        .forEach(
            entry ->
                entry
                    .value()
                    .as(NUMBER)
                    .ifPresent(read -> numbers.put(entry.key().value(), read.value())));
    return numbers;
  }

  /** A quantity by whichever measure has its unit, or a count. */
  private static final Spelling<Requirement.Bound> NUMBER =
      (raw, refusal) -> {
        for (Measure measure : Measure.values()) {
          var read = measure.read(raw).value();
          if (read.isPresent()) {
            return read.map(Requirement.Bound.Amount::new);
          }
        }
        return DoseSpellings.counts(new Counts(0, 999))
            .read(raw, refusal)
            .flatMap(range -> range.low().map(Requirement.Bound.Count::new));
      };
}
