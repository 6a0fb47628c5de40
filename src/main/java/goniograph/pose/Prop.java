package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;

/**
 * A thing that is held or moved, at one moment.
 *
 * @param kind the pose word, for instance {@code band}
 * @param line its course through space, in body heights
 */
public record Prop(String kind, List<Vec> line) {
  public Prop {
    line = List.copyOf(line);
  }
}
