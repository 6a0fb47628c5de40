package goniograph.build;

import goniograph.body.Side;
import goniograph.library.Library;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Solved;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The solved scenes of a library's pose files, each solved once. Safe to share between threads. */
public final class Scenes {
  private record Key(String figure, boolean mirrored) {}

  private final Library library;
  private final Map<Key, Optional<Solved>> solved = new ConcurrentHashMap<>();

  public Scenes(Library library) {
    this.library = library;
  }

  /**
   * The scene of a pose file, for a side where the entry has one; poses are written for the right.
   * Empty where there is no such file or it cannot be read.
   */
  public Optional<Solved> scene(String figure, Optional<Side> side) {
    Key key = new Key(figure, side.equals(Optional.of(Side.LEFT)));
    return solved.computeIfAbsent(key, this::solve);
  }

  private Optional<Solved> solve(Key key) {
    return library
        .figure(key.figure())
        .flatMap(file -> PoseReader.read(file, finding -> {}).stream().findFirst())
        .map(pose -> key.mirrored() ? pose.mirrored() : pose)
        .map(PoseSolver::solve);
  }
}
