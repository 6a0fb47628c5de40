package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.Ladder;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.LocatedLadder;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A ladder that does not say when to go up or down, how long to stay, or who decides. */
public final class LadderCriteria implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-criteria",
          "A ladder lacks criteria for going up or for going down, the least time to stay on a"
              + " step, the last one too, or who decides.",
          "Without a rule one patient stays on step 1 for ever, and another leaps to the top.",
          "Slade 2016, exercise reporting checklist (CERT), items 7a and 15",
          Acceptance.NOBODY,
          Example.in(ExampleFiles.HEEL_TO_TOE, "ladder:\n  start: 1\n", "ladder:\n  «start: 1\n")
              .alongside(
                  ExampleFiles.HEEL_TO_TOE,
                  "  go_up_when: { all_reps_done_days: 5, grabs_at_most: 1 }\n",
                  ""));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return exercise.ladder().filter(ladder -> checked.readWell(exercise)).stream()
        .flatMap(this::finding);
  }

  private Stream<Finding> finding(LocatedLadder located) {
    Map<String, String> missing = missing(located.ladder());
    if (missing.isEmpty()) {
      return Stream.empty();
    }
    String names = missing.keySet().stream().collect(Collectors.joining("`, `", "`", "`"));
    String examples = missing.values().stream().collect(Collectors.joining("`, `", "`", "`"));
    return Stream.of(
        error(
            Places.start(located.at()),
            "The ladder lacks " + names + ".",
            "Add for instance " + examples + "."));
  }

  /** What is missing, each with an example. */
  private static Map<String, String> missing(Ladder ladder) {
    Map<String, String> missing = new LinkedHashMap<>();
    boolean several = ladder.steps().size() > 1;
    if (several && ladder.goUpWhen().isEmpty()) {
      missing.put("go_up_when", "go_up_when: { all_reps_done_days: 3, next_morning: settled }");
    }
    if (ladder.goDownUnless().isEmpty() && ladder.goDownWhen().isEmpty()) {
      missing.put("go_down_unless", "go_down_unless: { pain_at_most: 5, next_morning: settled }");
    }
    if (ladder.steps().stream().anyMatch(step -> ladder.stayAtLeast(step).isEmpty())) {
      missing.put("stay_at_least", "stay_at_least: 7 d");
    }
    if (several && ladder.steps().stream().anyMatch(step -> ladder.whoDecides(step).isEmpty())) {
      missing.put("who_decides", "who_decides: patient");
    }
    return missing;
  }
}
