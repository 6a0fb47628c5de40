package goniograph.pose;

import java.util.List;
import java.util.Optional;

/**
 * A thing that is held or lies against the body, at one moment.
 *
 * @param kind the pose word, for instance {@code band}
 * @param shapes what it is made of
 * @param pulls where and how it acts on the body
 * @param length of an elastic along its course, in body heights; empty for things with weight
 * @param massKg the mass of each such thing where the pose types it
 */
public record Prop(
    String kind,
    List<Shape> shapes,
    List<Pull> pulls,
    Optional<Double> length,
    Optional<Double> massKg) {
  public Prop {
    shapes = List.copyOf(shapes);
    pulls = List.copyOf(pulls);
  }

  /** True for what pulls by being stretched, not by its weight. */
  public boolean elastic() {
    return length.isPresent();
  }
}
