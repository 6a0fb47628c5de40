package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.SlotTable;
import goniograph.check.VersionRule;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.dose.Unit;
import goniograph.finding.Finding;
import goniograph.language.DoseNumbers;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Version;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A number of the dose, typed into a sentence. */
public final class NumberInProse implements VersionRule {
  private static final String ANGLE = "deg";

  /** A multiplication sign with a space on each side. */
  private static final int SIGN = 3;

  private static final RulePage PAGE =
      RulePage.of(
          "number-in-prose",
          "A number or number word stands beside a dose noun, a unit, × or %, or in a range. An error"
              + " if the dose says otherwise, a warning if it says the same or nothing, a note in an"
              + " advice topic, which has no dose. Angles, pain scores and the numbers of claims have"
              + " rules of their own.",
          "One number has one home: typed into a sentence it stays behind when the dose changes, and"
              + " differs from step to step.",
          RulePage.HOUSE,
          Acceptance.AUTHOR,
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "Step apart. Rest {relax}.",
              "Step apart. Rest {relax}, not «30» seconds."),
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "Step apart. Rest {relax}.",
              "Step apart. Rest {relax}, not «twenty» seconds."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    DoseNumbers numbers = DoseNumbers.of(checked.words(version.language()));
    ClaimCues claims = new ClaimCues(checked.words(version.language()));
    List<Dose> doses = doses(entry);
    return Said.all(version, checked).stream()
        .filter(said -> !claims.inNumbers(said) && (!said.marked() || said.in("do")))
        .flatMap(
            said ->
                once(numbers.find(said.text())).stream()
                    .filter(found -> !found.counts().equals(ANGLE))
                    .map(found -> finding(found, said, doses)));
  }

  /** Of "3 × 10" the first number alone: it is one mistake. */
  private static List<DoseNumbers.Found> once(List<DoseNumbers.Found> all) {
    List<DoseNumbers.Found> once = new ArrayList<>();
    int end = -SIGN;
    for (DoseNumbers.Found found : all) {
      boolean times = found.cue() == DoseNumbers.Cue.TIMES;
      if (!times || found.from() > end + SIGN) {
        once.add(found);
      }
      end = times ? found.to() : -SIGN;
    }
    return once;
  }

  private static List<Dose> doses(Entry entry) {
    return entry instanceof Exercise exercise
        ? exercise.rungs().stream().map(rung -> rung.dose().dose()).toList()
        : List.of();
  }

  private Finding finding(DoseNumbers.Found found, Said said, List<Dose> doses) {
    Span at = said.at(found.from(), found.to());
    String typed = said.text().substring(found.from(), found.to());
    List<DoseField> fields = fields(found.counts());
    List<DoseField> same = fields.stream().filter(field -> says(field, found, doses)).toList();
    List<DoseField> given = fields.stream().filter(f -> !values(f, doses).isEmpty()).toList();
    if (doses.isEmpty()) {
      return note(
          at,
          "`" + typed + "` is a number that no field of an advice topic holds.",
          "Leave it out where you can: every translation types it anew.");
    }
    if (!same.isEmpty() || given.isEmpty()) {
      return warning(at, "`" + typed + "` is a number of the dose typed by hand.", mend(same))
          .withBecause(same.isEmpty() ? "" : because(same.get(0), doses));
    }
    return error(at, "`" + typed + "` disagrees with the dose.", mend(given))
        .withBecause(because(given.get(0), doses));
  }

  private static String mend(List<DoseField> fields) {
    List<String> slots = fields.stream().flatMap(field -> SlotTable.of(field).stream()).toList();
    return slots.isEmpty()
        ? "Say it without a number, or give the field in front matter and write its slot."
        : "Write a slot in its place: `{" + String.join("}` or `{", slots) + "}`.";
  }

  private static String because(DoseField field, List<Dose> doses) {
    List<String> values =
        doses.stream()
            .flatMap(dose -> dose.get(field).stream())
            .map(value -> value.spelling())
            .distinct()
            .toList();
    return field.key() + ": " + String.join(", ", values);
  }

  private static boolean says(DoseField field, DoseNumbers.Found found, List<Dose> doses) {
    BigDecimal unit = Unit.ofCode(found.counts()).map(Unit::inBase).orElse(BigDecimal.ONE);
    boolean amount = doses.stream().anyMatch(dose -> dose.amount(field).isPresent());
    BigDecimal factor = amount ? unit : BigDecimal.ONE;
    List<BigDecimal> values = values(field, doses);
    return Stream.concat(Stream.of(found.value()), found.upTo().stream())
        .allMatch(typed -> values.stream().anyMatch(v -> v.compareTo(typed.multiply(factor)) == 0));
  }

  private static List<BigDecimal> values(DoseField field, List<Dose> doses) {
    return doses.stream()
        .flatMap(
            dose ->
                Stream.concat(
                    dose.amount(field).map(Quantity::inBase).stream(),
                    dose.count(field).stream().mapToObj(BigDecimal::valueOf)))
        .toList();
  }

  /** The fields that hold what a number counts, the likeliest first. */
  private static List<DoseField> fields(String counts) {
    return switch (counts) {
      case "reps" -> List.of(DoseField.REPS, DoseField.PER_DAY);
      case "sets" -> List.of(DoseField.SETS);
      case "sessions" -> List.of(DoseField.PER_DAY);
      case "s", "min" ->
          List.of(
              DoseField.HOLD,
              DoseField.RELAX,
              DoseField.REST,
              DoseField.TEMPO_LIFT,
              DoseField.TEMPO_PAUSE,
              DoseField.TEMPO_LOWER,
              DoseField.TEMPO_BOTTOM);
      case "h" -> List.of(DoseField.GAP);
      case "d" -> List.of(DoseField.DAYS_PER_WEEK);
      case "wk", "mo" -> List.of(DoseField.DURATION);
      case "kg", "g" -> List.of(DoseField.LOAD_MASS);
      case "N" -> List.of(DoseField.LOAD_FORCE);
      case "cm", "m" -> List.of(DoseField.SEAT_HEIGHT, DoseField.STEP_HEIGHT);
      case "%", "percent" -> List.of(DoseField.LOAD_BODY_SHARE);
      default -> List.of(DoseField.REPS, DoseField.SETS, DoseField.HOLD);
    };
  }
}
