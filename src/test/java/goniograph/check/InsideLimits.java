package goniograph.check;

import goniograph.dose.Quantity;
import goniograph.dose.Sides;
import goniograph.dose.Unit;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.DoseLimit;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Precaution.Within;
import goniograph.pose.ContactMiss;
import goniograph.pose.PoseReader;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import goniograph.source.SourceFile;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a mutant is a change that the clinic's signed tables allow: worked out from the tables,
 * the texts and the solved pose, and not from what is found.
 */
final class InsideLimits {
  private static final Pattern STAY = Pattern.compile("stay_at_least: (\\d+) (d|wk)\\b");
  private static final Pattern DURATION = Pattern.compile("\\bduration: (\\d+) (d|wk)\\b");
  private static final Pattern SIDE =
      Pattern.compile("(?<!all )\\b(left|right)\\b(?! in front of)");

  private final DemoLibrary demo;

  InsideLimits(DemoLibrary demo) {
    this.demo = demo;
  }

  /** Why a mutant is allowed; empty where it is not. */
  Optional<String> why(Mutant mutant) {
    return switch (mutant.kind()) {
      case STATEMENT, EMERGENCY -> unasked(mutant);
      case UNIT, TEN -> allowed(mutant);
      case POSE_SIDE -> sideless(mutant);
      default -> Optional.empty();
    };
  }

  /** No row of the signed table asks for the statement on any step, and no text calls it. */
  private Optional<String> unasked(Mutant mutant) {
    String id = mutant.words().isEmpty() ? "" : mutant.words().get(0);
    Entry entry = demo.library().entry(mutant.entry()).orElseThrow();
    boolean called = demo.text(mutant.path()).contains("{" + id + "}");
    return id.isEmpty() || called || asked(entry).contains(id)
        ? Optional.empty()
        : Optional.of("no rule asks for " + id);
  }

  private List<String> asked(Entry entry) {
    List<String> asked = new ArrayList<>();
    if (entry instanceof Exercise exercise) {
      Poses poses = demo.poses(demo.library());
      exercise
          .rungs()
          .forEach(
              rung -> asked.addAll(Derived.of(demo.library(), poses, exercise, rung).statements()));
    } else {
      asked.addAll(Derived.of(demo.library().requirements(), entry).statements());
    }
    return asked;
  }

  /** The new value lies inside every row that could hold for the entry; a stay, in the duration. */
  private Optional<String> allowed(Mutant mutant) {
    String field = mutant.words().get(0);
    if (field.equals("stay_at_least")) {
      long days =
          STAY.matcher(mutant.text()).results().mapToLong(m -> days(m.group(1), m.group(2))).sum();
      Matcher duration = DURATION.matcher(mutant.text());
      return duration.find() && days <= days(duration.group(1), duration.group(2))
          ? Optional.of("all steps take " + days + " d, inside the duration")
          : Optional.empty();
    }
    return field.equals("duration") ? Optional.empty() : inRows(mutant, field);
  }

  private static long days(String number, String unit) {
    return Long.parseLong(number) * (unit.equals("wk") ? 7 : 1);
  }

  private Optional<String> inRows(Mutant mutant, String field) {
    List<DoseLimit> rows =
        demo.library().limits().stream()
            .filter(row -> ("." + row.field().value()).endsWith("." + field) && !row.asksFor())
            .filter(row -> covers(row, mutant.entry()))
            .toList();
    String line = mutant.text().lines().skip(mutant.line() - 1).findFirst().orElse("");
    Matcher value = Pattern.compile("\\b" + field + ": ([\\d.]+)(?: (\\w+))?").matcher(line);
    if (rows.isEmpty() || !value.find()) {
      return Optional.empty();
    }
    Optional<Unit> unit =
        Arrays.stream(Unit.values()).filter(one -> one.code().equals(value.group(2))).findFirst();
    BigDecimal base =
        unit.map(one -> Quantity.of(value.group(1), one).inBase())
            .orElseGet(() -> new BigDecimal(value.group(1)));
    return rows.stream().allMatch(row -> holds(row.limit().value(), base))
        ? Optional.of("inside " + rows.size() + " limits of " + field)
        : Optional.empty();
  }

  private boolean covers(DoseLimit row, String entry) {
    return demo.library()
        .exercise(entry)
        .filter(exercise -> exercise.rungs().stream().anyMatch(rung -> row.covers(exercise, rung)))
        .isPresent();
  }

  private static boolean holds(Within within, BigDecimal base) {
    if (within instanceof Within.Amounts amounts) {
      return amounts.range().low().filter(low -> base.compareTo(low.inBase()) < 0).isEmpty()
          && amounts.range().high().filter(high -> base.compareTo(high.inBase()) > 0).isEmpty();
    }
    return within instanceof Within.Counts counts
        && base.stripTrailingZeros().scale() <= 0
        && counts.range().contains(base.intValue());
  }

  /**
   * Nothing says which side is meant: the entry works on both sides or is no exercise, its text
   * names none, and the changed figure keeps every contact and every typed angle.
   */
  private Optional<String> sideless(Mutant mutant) {
    Entry entry = demo.library().entry(mutant.entry()).orElseThrow();
    String text = entry.common().file().text();
    boolean named = SIDE.matcher(text.substring(text.indexOf("\n---", 4))).find();
    boolean both =
        !(entry instanceof Exercise exercise)
            || List.of(Sides.Mode.MIDLINE, Sides.Mode.BOTH_TOGETHER, Sides.Mode.EACH_IN_TURN)
                .contains(exercise.sides().value().mode());
    return both && !named && sound(mutant)
        ? Optional.of("no side is meant, and the figure keeps contacts and angles")
        : Optional.empty();
  }

  private boolean sound(Mutant mutant) {
    List<Finding> found = new ArrayList<>();
    var read = PoseReader.read(SourceFile.of(mutant.path(), mutant.text()), found::add);
    if (found.stream().anyMatch(one -> one.level() == Level.ERROR) || read.size() != 1) {
      return false;
    }
    String id = mutant.path().replaceFirst("figures/(.*)\\.yaml", "$1");
    Solved solved = demo.solved(id, mutant.text());
    SceneFacts facts = solved.facts();
    return facts.differences().isEmpty()
        && facts.all().stream().flatMap(m -> m.misses().stream()).allMatch(ContactMiss::kept)
        && facts.all().stream().allMatch(m -> m.belowFloorCm() <= 1);
  }
}
