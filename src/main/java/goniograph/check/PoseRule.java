package goniograph.check;

import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.matter.Located;
import goniograph.pose.PoseFile;
import goniograph.pose.Solved;
import java.util.Optional;
import java.util.stream.Stream;

/** A rule about the poses of an exercise, each looked at once. */
public interface PoseRule extends ExerciseRule {
  /** What it finds in one pose. */
  Stream<Finding> check(Exercise exercise, PoseFile pose, Solved solved);

  /**
   * What it finds in a pose that no entry names yet, of a grown person; nothing where it needs the
   * entry.
   */
  default Stream<Finding> alone(PoseFile pose, Solved solved) {
    return Stream.empty();
  }

  @Override
  default Stream<Finding> check(Exercise exercise, Checked checked) {
    if (!checked.readWell(exercise)) {
      return Stream.empty();
    }
    return exercise.rungs().stream()
        .flatMap(rung -> rung.conditions().figure().stream())
        .map(Located::value)
        .distinct()
        .filter(id -> checked.poses().solved().containsKey(id))
        .flatMap(id -> solved(exercise, id, checked.poses()));
  }

  private Stream<Finding> solved(Exercise exercise, String id, Poses poses) {
    Optional<PoseFile> pose = Optional.ofNullable(poses.files().get(id));
    Optional<Solved> solved = Optional.ofNullable(poses.solved().get(id));
    return pose.stream()
        .flatMap(file -> solved.stream().flatMap(scene -> check(exercise, file, scene)));
  }
}
