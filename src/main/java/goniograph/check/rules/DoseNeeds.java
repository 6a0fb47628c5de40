package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.finding.Finding;
import goniograph.library.DoseLimit;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.source.Span;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Something that the table of limits asks for and the entry does not say. */
public final class DoseNeeds implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "dose-needs",
          "The table of limits asks this exercise, from some effort or pain on, for something that"
              + " the entry does not give: a day of rest between strength days, a warm-up before"
              + " hard work, a reason to carry on with more pain than usual.",
          "Muscles need about two days after hard work; pain above the usual limit must be meant.",
          "Each row of shared/rules/dose-limits.yaml with `limit: true` names its own",
          Acceptance.SIGNED_TABLE,
          Example.in(
              ExampleFiles.BAND,
              "days_per_week: 3, rest_day_between: true }",
              "days_per_week: «3» }"),
          Example.in(
                  ExampleFiles.BAND,
                  "  pain: { during_max: 4, reason: tendon-pain-is-expected }\n",
                  "  pain: { during_max: «4» }\n")
              .insteadOf("  pain: { during_max: 3 }\n"),
          Example.in(ExampleFiles.BAND, "  effort: 5..6\n", "  effort: «5..6»\n")
              .insteadOf("  effort: 4..5\n")
              .where(
                  ExampleFiles.BAND,
                  ExampleFiles.listed(ExampleFiles.BAND),
                  ExampleFiles.listed(ExampleFiles.BAND, "s-talk"))
              .alongside(ExampleFiles.BAND, "warm_up: walk-on-the-spot-2-min\n", ""));

  /** Where to show what is missing: beside what makes it needed. */
  private static final Map<String, DoseField> BESIDE =
      Map.of(
          DoseField.REST_DAY_BETWEEN.key(),
          DoseField.DAYS_PER_WEEK,
          DoseField.PAIN_REASON.key(),
          DoseField.PAIN_DURING_MAX,
          DoseLimit.WARM_UP,
          DoseField.EFFORT);

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    return checked.library().limits().stream()
        .filter(row -> row.asksFor() && row.covers(exercise, rung))
        .filter(
            row ->
                LimitedValue.of(row.field().value(), exercise, rung)
                    .filter(DoseNeeds::given)
                    .isEmpty())
        .map(row -> finding(row, rung));
  }

  /** A flag counts where it is set, anything else where it is written. */
  private static boolean given(DoseValue value) {
    return !(value instanceof DoseValue.Flag flag) || flag.yes();
  }

  private Finding finding(DoseLimit row, Rung rung) {
    String field = row.field().value();
    String scope =
        Optional.of(LimitWords.scope(row.scope()))
            .filter(words -> !words.isEmpty())
            .orElse("everywhere");
    Span at = Optional.ofNullable(BESIDE.get(field)).flatMap(rung.dose()::at).orElse(rung.at());
    return error(
            at,
            "`" + field + "` is not given; the table asks for it " + scope + ".",
            "Add `" + field + ": " + example(field) + "`, or lower what asks for it.")
        .withBecause(Words.onStep(rung.n(), scope))
        .withSource(row.source().value());
  }

  private static String example(String field) {
    return DoseField.ofKey(field)
        .map(known -> known.type().example())
        .orElse("walk-on-the-spot-2-min");
  }
}
