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
import goniograph.matter.Dotted;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one precaution of an exercise. */
final class PrecautionReader {
  private static final String AND_MORE = "..";

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
    for (Node.Field leaf : value.fields().map(Dotted::leaves).orElse(List.of())) {
      Optional<Spelling<Within>> within = within(leaf.key());
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

  private static Optional<Spelling<Within>> within(String key) {
    return switch (key) {
      case Limit.LADDER_MAX -> Optional.of(new ThenCounts(new Counts(1, 20)));
      case Limit.SUPPORT_NEED -> Optional.of(PrecautionReader::support);
      case Limit.FEET ->
          Optional.of(
              (raw, refusal) ->
                  Spellings.oneOf(Feet.class)
                      .read(raw, refusal)
                      .map(feet -> new Within.Word(Spellings.word(feet))));
      default ->
          DoseField.ofKey(key).map(field -> (raw, refusal) -> within(field.type(), raw, refusal));
    };
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

  private static Optional<Within> within(ValueType type, String raw, Spelling.Refusal refusal) {
    if (type instanceof ValueType.AnAmount amount) {
      return DoseSpellings.amounts(amount.measure()).read(raw, refusal).map(Within.Amounts::new);
    } else if (type instanceof ValueType.ACount count) {
      return new ThenCounts(count.counts()).read(raw, refusal);
    } else if (type instanceof ValueType.Scores) {
      return new ThenCounts(Counts.SCORE).read(raw, refusal);
    }
    return DoseSpellings.of(type).read(raw, refusal).map(word -> new Within.Word(word.spelling()));
  }

  private record ThenCounts(Counts counts) implements Spelling<Within> {
    @Override
    public Optional<Within> read(String raw, Refusal refusal) {
      return DoseSpellings.counts(counts).read(raw, refusal).map(Within.Counts::new);
    }
  }

  private static Finding unknown(Node.Field leaf) {
    List<String> known = new ArrayList<>(DoseReader.KEYS);
    known.addAll(List.of(Limit.LADDER_MAX, Limit.SUPPORT_NEED, Limit.FEET));
    String hint = Nearest.hint(leaf.key(), known);
    return Finding.error(
        "field-unknown",
        leaf.keyAt(),
        "`" + leaf.key() + "` is nothing that can be limited" + (hint.isEmpty() ? "." : hint),
        "A limit that is not known would not be kept.",
        "Write a field of the dose, `ladder_max`, `support.need` or `feet`.");
  }
}
