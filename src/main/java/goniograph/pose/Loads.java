package goniograph.pose;

import goniograph.body.Side;
import java.util.Map;
import java.util.Optional;

/**
 * Static moments in Nm at the joints that a free part hangs on; empty where the part carries a
 * contact, because then nobody knows who carries what. Estimates for comparing poses, never a
 * statement about a patient.
 *
 * @param neck head and neck about C7, flexing positive
 * @param neckMuscleN the neck extensors' force in N at the stated lever arm
 * @param lowBack all above the pelvis about L5-S1, flexing positive
 * @param shoulder each free arm about its shoulder
 * @param hip each free leg about its hip
 * @param knee each free lower leg about its knee
 */
public record Loads(
    Optional<Double> neck,
    Optional<Double> neckMuscleN,
    Optional<Double> lowBack,
    Map<Side, Double> shoulder,
    Map<Side, Double> hip,
    Map<Side, Double> knee) {
  public Loads {
    shoulder = Map.copyOf(shoulder);
    hip = Map.copyOf(hip);
    knee = Map.copyOf(knee);
  }
}
