package goniograph.check;

import goniograph.library.Rung;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import java.util.Optional;

/** Gives the pose of a step, if it has one that could be solved. */
@FunctionalInterface
public interface StepFacts {
  /** The solved pose of this step. */
  Optional<Solved> solved(Rung rung);

  /** The facts of the pose of this step. */
  default Optional<SceneFacts> facts(Rung rung) {
    return solved(rung).map(Solved::facts);
  }
}
