package goniograph.check;

import goniograph.library.Rung;
import goniograph.pose.SceneFacts;
import java.util.Optional;

/** Gives the facts of the pose of a step, if it has one that could be solved. */
@FunctionalInterface
public interface StepFacts {
  /** The facts of the pose of this step. */
  Optional<SceneFacts> facts(Rung rung);
}
