package goniograph.library;

import goniograph.dose.Counts;
import goniograph.dose.Measure;
import goniograph.library.TagRule.PackCare;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.Supervision;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the tables of required statements, of precaution tags and of checks of equipment. */
final class RequirementReader {
  private static final String LATEX_FREE = "latex-free";
  private static final int MOST_ENTRIES = 20;

  private RequirementReader() {}

  static Optional<Requirement> requirement(Form form) {
    var rule = form.required("rule", "breathe-on-effort").as(Spellings.ID_WORD);
    Trigger trigger = trigger(form, "when", "held-effort");
    var statements = form.optional("statements").list(Spellings.ID_WORD);
    var tags = form.optional("tags").list(Spellings.ID_WORD);
    var unless = form.optional("tags_unless_type").as(Spellings.oneOf(Type.class));
    var supervision = form.optional("supervision").as(Spellings.oneOf(Supervision.class));
    var source = form.required("source", "common-practice").as(Spellings.ID_WORD);
    if (rule.isEmpty() || trigger.when().isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Requirement(
            rule.get(), trigger, statements, tags, unless, supervision, source.get(), form.at()));
  }

  static Optional<TagRule> tagRule(Form form) {
    var tag = form.required("tag", "dizziness").as(WITH_REGION);
    Trigger trigger = trigger(form, "acts_on", "harder-balance");
    var unless = form.optional("unless_type").as(Spellings.oneOf(Type.class));
    var action = form.required("action", "leave-out").as(Spellings.oneOf(Action.class));
    var may = form.optional("entry_may").as(Spellings.oneOf(Action.class));
    var override = form.optional("override").as(Spellings.TRUTH);
    var limits = PrecautionReader.limits(form.optional("limits"));
    var statements = form.optional("statements").list(Spellings.ID_WORD);
    var equipment = form.optional("equipment").list(Spellings.ID_WORD);
    var bands = form.optional("bands").as(Spellings.oneOf(List.of(LATEX_FREE)));
    PackCare pack =
        form.optional("pack")
            .form("pack", RequirementReader::pack)
            .map(Located::value)
            .orElse(PackCare.NONE);
    var source = form.required("source", "common-practice").as(Spellings.ID_WORD);
    if (tag.isEmpty() || trigger.when().isEmpty() || action.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new TagRule(
            tag.get(),
            trigger,
            unless,
            action.get(),
            may,
            override.map(Located::value).orElse(true),
            limits,
            statements,
            equipment,
            bands.isPresent(),
            pack,
            source.get(),
            form.at()));
  }

  static Optional<EquipmentCheck> check(Form form) {
    var equipment = form.required("equipment", "[band-light]").list(Spellings.ID_WORD);
    var check = form.required("check", "no-nicks").as(Spellings.ID_WORD);
    var source = form.required("source", "common-practice").as(Spellings.ID_WORD);
    return check.flatMap(given -> source.map(from -> new EquipmentCheck(equipment, given, from)));
  }

  private static PackCare pack(Form form) {
    return new PackCare(
        form.optional("entries_max").as(Spellings.integer(1, MOST_ENTRIES)).map(Located::value),
        form.optional("layout").as(Spellings.ID_WORD),
        form.optional("add").as(Spellings.ID_WORD),
        form.optional("who_decides").as(Spellings.oneOf(List.of("therapist"))).isPresent());
  }

  private static Trigger trigger(Form form, String key, String example) {
    return new Trigger(
        words(form.required(key, example)), words(form.optional("and")), numbers(form));
  }

  /** One word, or a list of words. */
  private static List<Located<String>> words(Value value) {
    return value.node().filter(Node.Items.class::isInstance).isPresent()
        ? value.list(WITH_REGION)
        : value.as(WITH_REGION).stream().toList();
  }

  private static Map<String, Bound> numbers(Form form) {
    Map<String, Bound> numbers = new LinkedHashMap<>();
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

  private static final Pattern REGION_AT_END =
      Pattern.compile("(.+-)" + Pattern.quote(TagRule.EACH_REGION));

  /** An id, which may end in the sign for a region. */
  private static final Spelling<String> WITH_REGION =
      (raw, refusal) -> {
        var parts = REGION_AT_END.matcher(raw);
        return parts.matches()
            ? Spellings.ID_WORD.read(parts.group(1) + "hip", refusal).map(same -> raw)
            : Spellings.ID_WORD.read(raw, refusal);
      };

  /** A quantity by whichever measure has its unit, or a count. */
  private static final Spelling<Bound> NUMBER =
      (raw, refusal) -> {
        for (Measure measure : Measure.values()) {
          var read = measure.read(raw).value();
          if (read.isPresent()) {
            return read.map(Bound.Amount::new);
          }
        }
        return DoseSpellings.counts(new Counts(0, 999))
            .read(raw, refusal)
            .flatMap(range -> range.low().map(Bound.Count::new));
      };
}
