package goniograph.build;

import goniograph.body.Side;
import goniograph.check.Poses;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseSolver;
import goniograph.pose.Scene;
import goniograph.pose.Solved;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The solved scenes of a library, for either side; each solved once. Safe to share between threads.
 */
final class Scenes {
  private final Poses poses;
  private final Map<String, Scene> mirrored = new ConcurrentHashMap<>();

  Scenes(Poses poses) {
    this.poses = poses;
  }

  /**
   * The scene of a pose file, for a side where the entry has one; poses are written for the right.
   * Empty where there is no such file or it has errors.
   */
  Optional<Scene> scene(String figure, Optional<Side> side) {
    Optional<Scene> right = Optional.ofNullable(poses.solved().get(figure)).map(Solved::scene);
    return right.map(scene -> side.equals(Optional.of(Side.LEFT)) ? left(figure) : scene);
  }

  private Scene left(String figure) {
    return mirrored.computeIfAbsent(
        figure,
        id -> {
          PoseFile file = poses.files().get(id);
          if (file == null) {
            throw new IllegalStateException("a solved pose has its file: " + id);
          }
          return PoseSolver.solve(file.mirrored()).scene();
        });
  }
}
