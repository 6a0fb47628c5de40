package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.body.JointAngles;
import goniograph.source.Span;
import java.util.List;

/**
 * An angle as typed.
 *
 * @param freedom which joint and movement
 * @param value signed: the movement's second word gives minus
 * @param at the place of the movement and its number
 */
public record TypedAngle(Freedom freedom, double value, Span at) {

  /** All as angles; of two for one freedom, the last wins. */
  static JointAngles angles(List<TypedAngle> typed) {
    JointAngles angles = JointAngles.NONE;
    for (TypedAngle angle : typed) {
      angles = angles.with(angle.freedom, angle.value);
    }
    return angles;
  }

  /** Left and right swapped. */
  TypedAngle mirrored() {
    JointAngles swapped = JointAngles.NONE.with(freedom, value).mirrored();
    return new TypedAngle(freedom.mirrored(), swapped.get(freedom.mirrored()), at);
  }
}
