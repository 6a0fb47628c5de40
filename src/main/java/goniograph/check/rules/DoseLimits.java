package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.source.Span;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A dose outside the limits of its type of exercise, its region or its audience. */
public final class DoseLimits implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "dose-limit",
          "A value of the dose, or a time worked out from it, is outside the limits that the"
              + " clinic's table sets for this type of exercise, aim, region or audience: an"
              + " error. Outside the table's `warn`, where it has one: a warning. At a limit is"
              + " inside. Of a range the top counts. Every row that covers the step counts. A row"
              + " with `from_effort` or `from_pain` holds from there on; one with `first_step`"
              + " where a patient begins.",
          "Too much is harm, too little is no treatment; most often it is a slip of the pen.",
          "Each row of shared/rules/dose-limits.yaml names its own",
          Acceptance.SIGNED_TABLE,
          Example.in(ExampleFiles.HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «20 min»\n"),
          Example.in(
              ExampleFiles.BAND,
              "per_day: 1, days_per_week: 3, rest_day_between",
              "per_day: «2», days_per_week: 3, rest_day_between"),
          Example.in(ExampleFiles.HEEL_TO_TOE, "{ n: 2, hold: 30 s,", "{ n: 2, hold: «40 s»,")
              .where(ExampleFiles.HEEL_TO_TOE, "figure: ba", "audience: { child: 9 }\nfigure: ba"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    Map<Span, List<Breach>> places =
        Breach.all(checked.library().limits(), exercise, rung).stream()
            .collect(Collectors.groupingBy(Breach::at, LinkedHashMap::new, Collectors.toList()));
    return places.values().stream().map(breaches -> finding(breaches, rung));
  }

  /** One finding for a place: the gravest of its breaches, and of these the narrowest first. */
  private Finding finding(List<Breach> breaches, Rung rung) {
    Level level = breaches.stream().map(Breach::level).min(Comparator.naturalOrder()).orElseThrow();
    List<Breach> gravest =
        breaches.stream()
            .filter(breach -> breach.level() == level)
            .sorted(Comparator.comparing(breach -> breach.passed().tightness().negate()))
            .toList();
    String what = gravest.stream().map(LimitWords::what).collect(Collectors.joining(" "));
    Breach first = gravest.get(0);
    String mend = LimitWords.mend(first) + ", or have the row of the table changed and signed.";
    Finding finding =
        level == Level.ERROR ? error(first.at(), what, mend) : warning(first.at(), what, mend);
    return finding
        .withBecause(Words.onStep(rung.n(), first.row().field().value() + " " + first.value()))
        .withSource(first.row().source().value());
  }
}
