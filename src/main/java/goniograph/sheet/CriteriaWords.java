package goniograph.sheet;

import goniograph.dose.Criterion;
import goniograph.dose.DoseValue;
import goniograph.dose.Ladder;
import goniograph.dose.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When to go up and down, in words. */
record CriteriaWords(Wording wording) {

  /** Going up and going down, each under its label. */
  List<LabelledLines> of(Ladder ladder) {
    List<String> up = new ArrayList<>();
    ladder.goUpWhen().values().forEach((which, value) -> up.add(holds(which, value)));
    List<String> down = new ArrayList<>();
    ladder.goDownUnless().values().forEach((which, value) -> down.add(broken(which, value)));
    ladder.goDownWhen().values().forEach((which, value) -> down.add(happens(which, value)));
    stay(ladder).ifPresent(up::add);
    return List.of(
        new LabelledLines(wording.say("label.go-up"), up),
        new LabelledLines(wording.say("label.go-down"), down));
  }

  private String holds(Criterion which, DoseValue value) {
    return switch (which) {
      case NEXT_MORNING -> wording.say("criterion.next-morning-settled");
      default -> counted(phrase(which), value);
    };
  }

  private String broken(Criterion which, DoseValue value) {
    return switch (which) {
      case NEXT_MORNING -> wording.say("criterion.next-morning-not-settled");
      case PAIN_AT_MOST -> counted("criterion.pain-over", value);
      case EFFORT_AT_MOST -> counted("criterion.effort-over", value);
      default -> counted("criterion.grabs-over", value);
    };
  }

  private String happens(Criterion which, DoseValue value) {
    return counted(phrase(which), value);
  }

  private String counted(String id, DoseValue value) {
    int n = value instanceof DoseValue.Count count ? count.number() : 0;
    return wording.say(id, Map.of("n", n));
  }

  private Optional<String> stay(Ladder ladder) {
    return ladder.steps().stream()
        .flatMap(step -> ladder.stayAtLeast(step).stream())
        .min(Quantity::compareTo)
        .map(time -> wording.say("criterion.stay", Map.of("time", wording.amount(time))));
  }

  private static String phrase(Criterion which) {
    return "criterion." + which.key().replace('_', '-');
  }
}
