package goniograph.library;

import goniograph.dose.Counts;
import goniograph.dose.DoseField;
import goniograph.dose.Measure;
import goniograph.dose.Range;
import goniograph.dose.ValueType;
import goniograph.library.DoseLimit.ForWhom;
import goniograph.library.DoseLimit.Scope;
import goniograph.library.Precaution.Within;
import goniograph.library.Vocabulary.AgeGroup;
import goniograph.library.Vocabulary.Aim;
import goniograph.library.Vocabulary.Region;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the table of dose limits. */
final class LimitReader {
  private static final String ANY = "any";
  private static final String ASKED_FOR = "true";
  private static final int OLDEST_CHILD = 17;
  private static final int MOST_ENTRIES = 99;
  private static final Map<String, String> FIELDS = fields();

  private LimitReader() {}

  static Optional<DoseLimit> limit(Form form) {
    Optional<List<Type>> types = types(form.required("type", ANY));
    var field = form.required("field", "hold").as(Spellings.oneOf(FIELDS));
    var within = field.map(given -> within(given.value()));
    Value limit = form.required("limit", "1..60 s");
    Value warn = form.optional("warn");
    var outside = within.flatMap(limit::as);
    var edge = within.flatMap(warn::as);
    var source = form.required("source", "common-practice").as(Spellings.ID_WORD);
    Scope scope = scope(form, types.orElse(List.of()));
    if (types.isEmpty()
        || misread(form, scope)
        || field.isEmpty()
        || outside.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new DoseLimit(scope, field.get(), outside.get(), edge, source.get(), form.at()));
  }

  /** A row of which the scope was misread would hold for too many. */
  private static boolean misread(Form form, Scope scope) {
    return (form.optional("region").present() && scope.regions().isEmpty())
        || (form.optional("aim").present() && scope.aim().isEmpty())
        || (form.optional("audience").present() && scope.audience().isEmpty())
        || (form.optional("from_effort").present() && scope.fromEffort().isEmpty())
        || (form.optional("from_pain").present() && scope.fromPain().isEmpty());
  }

  private static Scope scope(Form form, List<Type> types) {
    return new Scope(
        types,
        form.optional("aim").as(Spellings.oneOf(Aim.class)).map(Located::value),
        oneOrMore(form.optional("region"), Region.class),
        forWhom(form.optional("audience")),
        form.optional("from_effort").as(Spellings.integer(0, 10)).map(Located::value),
        form.optional("from_pain").as(Spellings.integer(0, 10)).map(Located::value),
        form.optional("first_step").as(Spellings.TRUTH).map(Located::value).orElse(false));
  }

  /** {@code any} is the empty list; nothing where no type could be read. */
  private static Optional<List<Type>> types(Value value) {
    if (value.node().filter(LimitReader::isAny).isPresent()) {
      return Optional.of(List.of());
    }
    List<Type> types = oneOrMore(value, Type.class);
    return types.isEmpty() ? Optional.empty() : Optional.of(types);
  }

  private static boolean isAny(Node node) {
    return node instanceof Node.Scalar scalar && scalar.raw().equals(ANY);
  }

  /** One word, or several in a list. */
  private static <E extends Enum<E>> List<E> oneOrMore(Value value, Class<E> words) {
    Spelling<E> spelling = Spellings.oneOf(words);
    boolean several = value.node().filter(Node.Items.class::isInstance).isPresent();
    List<Located<E>> read = several ? value.list(spelling) : value.as(spelling).stream().toList();
    return read.stream().map(Located::value).toList();
  }

  /** {@code older}, or {@code { child: 6..11 }} for children of some ages. */
  private static Optional<ForWhom> forWhom(Value value) {
    if (value.node().filter(Node.Fields.class::isInstance).isEmpty()) {
      return value
          .as(Spellings.oneOf(AgeGroup.class))
          .map(group -> new ForWhom(group.value(), Optional.empty()));
    }
    Spelling<Range<Integer>> ages = DoseSpellings.counts(new Counts(0, OLDEST_CHILD));
    return value
        .form("audience", form -> form.required("child", "6..11").as(ages))
        .flatMap(Located::value)
        .map(range -> new ForWhom(AgeGroup.CHILD, Optional.of(range.value())));
  }

  /** Dose fields by key and by last word, besides the pain limit and what is worked out. */
  private static Map<String, String> fields() {
    Map<String, String> fields = new LinkedHashMap<>();
    DoseLimit.WORKED_OUT.forEach(word -> fields.put(word, word));
    for (DoseField field : DoseField.values()) {
      fields.put(field.key(), field.key());
      fields.putIfAbsent(field.key().substring(field.key().lastIndexOf('.') + 1), field.key());
    }
    fields.put("pain", DoseField.PAIN_DURING_MAX.key());
    return Collections.unmodifiableMap(fields);
  }

  private static Spelling<Within> within(String field) {
    Spelling<Within> bounds =
        DoseField.ofKey(field).map(known -> bounds(known.type())).orElseGet(() -> workedOut(field));
    return (raw, refusal) ->
        raw.equals(ASKED_FOR) ? Optional.of(new Within.Word(ASKED_FOR)) : bounds.read(raw, refusal);
  }

  private static Spelling<Within> workedOut(String field) {
    return switch (field) {
      case DoseLimit.WARM_UP -> asking();
      case DoseLimit.REGION_ENTRIES -> bounds(new Counts(0, MOST_ENTRIES));
      default -> bounds(Measure.SECONDS);
    };
  }

  private static Spelling<Within> bounds(ValueType type) {
    if (type instanceof ValueType.AnAmount amount) {
      return bounds(amount.measure());
    }
    if (type instanceof ValueType.ACount count) {
      return bounds(count.counts());
    }
    return type instanceof ValueType.Scores ? bounds(Counts.SCORE) : asking();
  }

  private static Spelling<Within> bounds(Measure measure) {
    return (raw, refusal) ->
        DoseSpellings.amounts(measure).read(raw, refusal).map(Within.Amounts::new);
  }

  private static Spelling<Within> bounds(Counts counts) {
    return (raw, refusal) ->
        DoseSpellings.counts(counts).read(raw, refusal).map(Within.Counts::new);
  }

  /** For words and flags, which have no bounds. */
  private static Spelling<Within> asking() {
    Spelling<String> word = Spellings.oneOf(List.of(ASKED_FOR));
    return (raw, refusal) -> word.read(raw, refusal).map(Within.Word::new);
  }
}
