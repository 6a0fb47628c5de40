package goniograph.pose;

import goniograph.body.Turn;
import goniograph.body.Vec;

/**
 * A box: a seat, a leg of a chair, a worktop, a wall; with rounded edges a mattress or a pillow.
 *
 * @param centre its middle, in body heights
 * @param axes its own axes
 * @param half half its size along its own axes
 * @param round the radius of its edges; 0 for sharp ones
 */
public record Box(Vec centre, Turn axes, Vec half, double round) implements Shape {
  /** A box with sharp edges. */
  public Box(Vec centre, Turn axes, Vec half) {
    this(centre, axes, half, 0);
  }

  /** The same with its edges rounded, as far as its smallest side allows. */
  Box rounded(double radius) {
    double least = Math.min(half.x(), Math.min(half.y(), half.z()));
    return new Box(centre, axes, half, Math.min(radius, .95 * least));
  }
}
