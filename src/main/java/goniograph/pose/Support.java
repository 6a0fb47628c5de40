package goniograph.pose;

import java.util.List;

/**
 * Something that carries or steadies the body: floor, chair, counter, wall, mat.
 *
 * @param kind the pose word, for instance {@code chair}
 * @param boxes its boxes; the floor has none
 * @param carries true where the body rests on it, so that it is drawn behind the body
 */
public record Support(String kind, List<Box> boxes, boolean carries) {
  public Support {
    boxes = List.copyOf(boxes);
  }
}
