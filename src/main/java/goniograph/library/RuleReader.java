package goniograph.library;

import goniograph.dose.Counts;
import goniograph.dose.DoseField;
import goniograph.dose.ValueType;
import goniograph.library.Precaution.Within;
import goniograph.library.Vocabulary.Aim;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the table of dose limits. */
final class RuleReader {
  private static final String ANY = "any";

  private RuleReader() {}

  static Optional<DoseLimit> limit(Form form) {
    Map<String, Optional<Type>> types = new LinkedHashMap<>();
    types.put(ANY, Optional.empty());
    Arrays.stream(Type.values()).forEach(t -> types.put(Spellings.word(t), Optional.of(t)));
    var type = form.required("type", ANY).as(Spellings.oneOf(types));
    var field = form.required("field", "hold").as(Spellings.oneOf(fields()));
    Spelling<Within> within =
        field.map(given -> within(measured(given.value()))).orElse(RuleReader::anything);
    var limit = form.required("limit", "1..60 s").as(within);
    var warn = form.optional("warn").as(within);
    var effort = form.optional("from_effort").as(Spellings.integer(0, 10)).map(Located::value);
    var aim = form.optional("aim").as(Spellings.oneOf(Aim.class)).map(Located::value);
    var source = form.required("source", "common-practice").as(Spellings.ID_WORD);
    if (type.isEmpty() || field.isEmpty() || limit.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new DoseLimit(
            type.get().value(),
            field.get(),
            limit.get(),
            warn,
            effort,
            aim,
            source.get(),
            form.at()));
  }

  /** Dose fields by key and by last word, besides the pain limit and the sum of the tempo. */
  private static Map<String, String> fields() {
    Map<String, String> fields = new LinkedHashMap<>();
    for (DoseField field : DoseField.values()) {
      fields.put(field.key(), field.key());
      fields.putIfAbsent(field.key().substring(field.key().lastIndexOf('.') + 1), field.key());
    }
    fields.put("pain", DoseField.PAIN_DURING_MAX.key());
    fields.put("tempo", "tempo");
    return fields;
  }

  private static ValueType measured(String field) {
    return DoseField.ofKey(field).orElse(DoseField.HOLD).type();
  }

  private static Spelling<Within> within(ValueType type) {
    if (type instanceof ValueType.AnAmount amount) {
      return (raw, refusal) ->
          DoseSpellings.amounts(amount.measure()).read(raw, refusal).map(Within.Amounts::new);
    }
    Counts counts = type instanceof ValueType.ACount count ? count.counts() : Counts.SCORE;
    return (raw, refusal) ->
        DoseSpellings.counts(counts).read(raw, refusal).map(Within.Counts::new);
  }

  private static Optional<Within> anything(String raw, Spelling.Refusal refusal) {
    return Optional.of(new Within.Word(raw));
  }
}
