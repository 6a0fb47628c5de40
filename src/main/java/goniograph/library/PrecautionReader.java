package goniograph.library;

import goniograph.dose.Counts;
import goniograph.dose.DoseField;
import goniograph.dose.ValueType;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Precaution.Limit;
import goniograph.library.Precaution.Swap;
import goniograph.library.Precaution.Within;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.Feet;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Shape;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads one precaution of an exercise. */
final class PrecautionReader {
  private static final String AND_MORE = "..";
  private static final Map<String, Spelling<Within>> LIMITS = spellings();

  Optional<Precaution> read(Form form) {
    var tag = form.required("tag", "dizziness").as(Spellings.ID_WORD);
    var action = form.required("action", "leave-out").as(Spellings.oneOf(Action.class));
    List<Limit> limits = limits(form.optional("limits"));
    List<Swap> swaps = swaps(form.optional("swap"));
    var statement = form.optional("statement").as(Spellings.ID_WORD);
    var override = form.optional("override").as(Spellings.TRUTH);
    if (tag.isEmpty() || action.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Precaution(tag.get(), action.get(), limits, swaps, statement, override, form.at()));
  }

  /** A map of old ids to new ones. */
  static List<Swap> swaps(Value value) {
    List<Swap> swaps = new ArrayList<>();
    value
        .form("swap", Form::entries)
        .map(Located::value)
        .orElse(List.of())
        .forEach(
            entry ->
                entry
                    .value()
                    .as(Spellings.ID_WORD)
                    .ifPresent(to -> swaps.add(new Swap(entry.key(), to))));
    return List.copyOf(swaps);
  }

  /** Limits by the dotted keys of their fields. */
  static List<Limit> limits(Value value) {
    List<Limit> limits = new ArrayList<>();
    for (Node.Field leaf : value.leaves(LIMITS)) {
      Optional<Spelling<Within>> within = Optional.ofNullable(LIMITS.get(leaf.key()));
      if (within.isEmpty()) {
        value.findings().accept(unknown(leaf));
      } else {
        new Value(leaf.key(), Optional.of(leaf.value()), value.findings())
            .as(within.get())
            .ifPresent(
                read -> limits.add(new Limit(new Located<>(leaf.key(), leaf.keyAt()), read)));
      }
    }
    return List.copyOf(limits);
  }

  private static Map<String, Spelling<Within>> spellings() {
    Map<String, Spelling<Within>> spellings = new LinkedHashMap<>();
    for (DoseField field : DoseField.values()) {
      spellings.put(field.key(), within(field.type()));
    }
    spellings.put(Limit.LADDER_MAX, counts(new Counts(1, 20)));
    spellings.put(Limit.SUPPORT_NEED, support());
    spellings.put(
        Limit.FEET, Spellings.oneOf(Feet.class).map(feet -> new Within.Word(Spellings.word(feet))));
    return spellings;
  }

  private static Spelling<Within> support() {
    Spelling<Within> spelling = PrecautionReader::support;
    String words =
        Arrays.stream(SupportNeed.values()).map(Spellings::word).collect(Collectors.joining("|"));
    return spelling.shaped(new Shape.Text("(" + words + ")\\.\\."));
  }

  /** {@code fingertip..}: that or more. */
  private static Optional<Within> support(String raw, Spelling.Refusal refusal) {
    if (!raw.endsWith(AND_MORE)) {
      refusal.because(
          "quantity-range",
          "`" + raw + "` does not say that a firmer hold is allowed too.",
          "Write the least with two dots behind it, for instance `fingertip..`.");
      return Optional.empty();
    }
    return Spellings.oneOf(SupportNeed.class)
        .read(raw.substring(0, raw.length() - AND_MORE.length()), refusal)
        .map(Within.Support::new);
  }

  private static Spelling<Within> within(ValueType type) {
    if (type instanceof ValueType.AnAmount amount) {
      return DoseSpellings.amounts(amount.measure()).map(Within.Amounts::new);
    } else if (type instanceof ValueType.ACount count) {
      return counts(count.counts());
    } else if (type instanceof ValueType.Scores) {
      return counts(Counts.SCORE);
    }
    return DoseSpellings.of(type).map(word -> new Within.Word(word.spelling()));
  }

  private static Spelling<Within> counts(Counts counts) {
    return DoseSpellings.counts(counts).map(Within.Counts::new);
  }

  private static Finding unknown(Node.Field leaf) {
    String hint = Nearest.hint(leaf.key(), LIMITS.keySet());
    return Finding.error(
        "field-unknown",
        leaf.keyAt(),
        "`" + leaf.key() + "` is nothing that can be limited" + (hint.isEmpty() ? "." : hint),
        "A limit that is not known would not be kept.",
        "Write a field of the dose, `ladder_max`, `support.need` or `feet`.");
  }
}
