package goniograph.check;

import goniograph.library.Exercise;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.pose.SceneFacts;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One exercise on one step, looked at by one row of the rule table.
 *
 * @param exercise the exercise
 * @param rung the step, with the whole dose and all conditions
 * @param pose the facts of its pose, if that could be solved
 * @param row the row, which holds the limits
 */
record Situation(Exercise exercise, Rung rung, Optional<SceneFacts> pose, Requirement row) {

  /** A limit of the row, in its base unit; nothing where the row does not set it. */
  Optional<BigDecimal> limit(String name) {
    return Optional.ofNullable(row.numbers().get(name)).map(Requirement.Bound::inBase);
  }

  /** Whether a value reaches a limit of the row; false where the row does not set the limit. */
  boolean reaches(BigDecimal value, String limit) {
    return limit(limit).filter(least -> value.compareTo(least) >= 0).isPresent();
  }
}
