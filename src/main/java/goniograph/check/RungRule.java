package goniograph.check;

import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.source.Span;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A rule about each step of an exercise. What all steps share is found once: of several findings
 * about one place the gravest counts, of these the first.
 */
public interface RungRule extends ExerciseRule {
  /** What it finds on one step. */
  Stream<Finding> check(Exercise exercise, Rung rung, Checked checked);

  @Override
  default Stream<Finding> check(Exercise exercise, Checked checked) {
    Map<Span, Finding> first = new LinkedHashMap<>();
    exercise.rungs().stream()
        .flatMap(rung -> check(exercise, rung, checked))
        .sorted(Comparator.comparing(Finding::level))
        .forEach(finding -> first.putIfAbsent(finding.at(), finding));
    return first.values().stream();
  }
}
