package goniograph.check;

import goniograph.finding.Finding;
import goniograph.library.Exercise;
import java.util.stream.Stream;

/** A rule about an exercise as a whole. */
public interface ExerciseRule extends Rule {
  /** What it finds in one exercise. */
  Stream<Finding> check(Exercise exercise, Checked checked);

  @Override
  default Stream<Finding> check(Checked checked) {
    return checked
        .exercises()
        .flatMap(
            exercise -> check(exercise, checked).map(finding -> finding.withEntry(exercise.id())));
  }
}
