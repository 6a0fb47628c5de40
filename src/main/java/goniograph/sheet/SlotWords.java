package goniograph.sheet;

import goniograph.body.Side;
import goniograph.check.SlotTable;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.library.Clinic;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.matter.Inline;
import goniograph.matter.Piece;
import goniograph.matter.Spellings;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pieces of text with their slots filled in, for one step and side.
 *
 * @param wording the language
 * @param clinic the clinic file, for the slots of statements
 * @param dose the dose of the printed step
 * @param exercise the exercise, empty for an advice topic
 * @param rung the printed step, empty for an advice topic
 * @param side the side that is drawn
 */
record SlotWords(
    Wording wording,
    Clinic clinic,
    Dose dose,
    Optional<Exercise> exercise,
    Optional<Rung> rung,
    Side side) {
  private static final Pattern SLOT = Pattern.compile("\\{([^{}]*)}");
  private static final Map<DoseField, String> COUNTED =
      Map.of(
          DoseField.REPS, "count.reps",
          DoseField.SETS, "count.sets",
          DoseField.PER_DAY, "count.per-day",
          DoseField.DAYS_PER_WEEK, "count.days-per-week");

  /** A piece as it is printed: slots filled in, claim marks gone. */
  String fill(Piece piece) {
    return tidy(fill(piece.parts()));
  }

  private String fill(List<Inline> parts) {
    StringBuilder filled = new StringBuilder();
    for (Inline part : parts) {
      if (part instanceof Inline.Words words) {
        filled.append(words.text());
      } else if (part instanceof Inline.Slot slot) {
        filled.append(slot(slot.name()));
      } else if (part instanceof Inline.Stress stress) {
        filled.append(fill(stress.parts()));
      }
    }
    return filled.toString();
  }

  /** The text of a statement with its slots filled in. */
  String fill(String text) {
    return tidy(SLOT.matcher(text).replaceAll(m -> Matcher.quoteReplacement(slot(m.group(1)))));
  }

  private static String tidy(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private String slot(String name) {
    if (SlotTable.CLINIC.contains(name)) {
      return clinic(name);
    } else if (name.startsWith("side") || name.startsWith("other")) {
      return side(name);
    }
    return switch (name) {
      case "step" -> rung.map(r -> wording.number(r.n())).orElse("");
      case "load" -> load(dose);
      case "support" -> rung.map(this::support).orElse("");
      default ->
          SlotTable.step(name).map(step -> ofStep(step, name)).orElseGet(() -> value(dose, name));
    };
  }

  private String ofStep(String step, String name) {
    Dose there = exercise.flatMap(e -> stepDose(e, step)).orElse(dose);
    return name.endsWith(".load") ? load(there) : value(there, name);
  }

  private Optional<Dose> stepDose(Exercise exercise, String step) {
    int here = rung.map(Rung::n).orElse(1);
    int n =
        switch (step) {
          case "previous" -> here - 1;
          case "next" -> here + 1;
          default -> Integer.parseInt(step);
        };
    return exercise.rung(n).map(found -> found.dose().dose());
  }

  private String value(Dose from, String name) {
    DoseField field = SlotTable.field(name).orElseThrow();
    if (name.endsWith(".count")) {
      return from.amount(field).map(q -> wording.number(q.inBase())).orElse("");
    }
    OptionalInt count = from.count(field);
    if (count.isPresent()) {
      return counted(field, count.getAsInt());
    }
    return from.amount(field).map(wording::amount).orElse("");
  }

  private String counted(DoseField field, int n) {
    String phrase = COUNTED.get(field);
    return phrase == null ? wording.number(n) : wording.say(phrase, Map.of("n", n));
  }

  private String load(Dose from) {
    return from.word(DoseField.LOAD_BAND)
        .map(band -> wording.say("load." + band))
        .or(() -> from.amount(DoseField.LOAD_MASS).map(wording::amount))
        .orElseGet(() -> wording.say("load.none"));
  }

  private String support(Rung at) {
    SupportNeed need =
        at.conditions().support().need().map(n -> n.value()).orElse(SupportNeed.NONE_NEEDED);
    String object =
        at.conditions().support().object().map(o -> wording.say("object." + o.value())).orElse("");
    return wording.say("support." + Spellings.word(need), Map.of("object", object));
  }

  private String side(String name) {
    Side meant = name.startsWith("other") ? side.other() : side;
    String rest = name.replaceFirst("^(side|other)", "").replace('.', '-').replace(':', '.');
    return wording.say("side." + meant.name().toLowerCase(Locale.ROOT) + rest);
  }

  private String clinic(String name) {
    return switch (name) {
      case "clinic.phone" -> ContactWords.phone(clinic);
      case "clinic.hours" -> new ContactWords(wording, clinic).hours();
      case "clinic.out_of_hours" -> ContactWords.phone(clinic.outOfHours().value());
      default -> ContactWords.phone(clinic.emergency().value());
    };
  }

  /** The number up to which one carries on, or nothing where the entry names none. */
  OptionalInt painMost() {
    return dose.count(DoseField.PAIN_DURING_MAX);
  }
}
