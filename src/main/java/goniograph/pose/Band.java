package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The course of an elastic band from hand to hand, and the door that holds its middle. */
final class Band {
  private final BandWish wish;
  private final Optional<Vec> anchor;

  /**
   * A band.
   *
   * @param start the body in the first key frame, which says where the door is
   */
  Band(BandWish wish, Skeleton start) {
    this.wish = wish;
    this.anchor =
        wish.from() == BandWish.From.DOOR ? Optional.of(anchor(wish, start)) : Optional.empty();
  }

  private static Vec anchor(BandWish wish, Skeleton s) {
    Vec hands = Landmarks.palm(s, Side.LEFT).towards(Landmarks.palm(s, Side.RIGHT), .5);
    Vec forward = Vec.UP.cross(s.pelvis().axes().z()).unit();
    double y =
        wish.heightCm() > 0
            ? s.body().fraction(wish.heightCm())
            : s.spine(SpineJoint.T8).origin().y();
    Vec at = hands.plus(forward.times(s.body().fraction(wish.distanceCm())));
    return new Vec(at.x(), y, at.z());
  }

  /** The band at one moment, from the left hand to the right. */
  Prop at(Skeleton s) {
    List<Vec> line = new ArrayList<>(List.of(Landmarks.palm(s, Side.LEFT)));
    anchor.ifPresent(line::add);
    if (wish.from() == BandWish.From.FEET) {
      line.add(Landmarks.ball(s, Side.LEFT));
      line.add(Landmarks.ball(s, Side.RIGHT));
    }
    line.add(Landmarks.palm(s, Side.RIGHT));
    return new Prop("band", line);
  }

  /** The edge of the door that holds the band. */
  Optional<Support> door(Body body) {
    return anchor.map(
        a -> {
          Vec half = new Vec(body.fraction(2), (a.y() + body.fraction(25)) / 2, body.fraction(30));
          Vec centre = new Vec(a.x() + half.x(), half.y(), a.z());
          return new Support("door", List.of(new Box(centre, Turn.NONE, half)), false);
        });
  }

  /** The length of a held band in cm, along its course. */
  static double lengthCm(Prop prop, Body body) {
    double length = 0;
    for (int i = 1; i < prop.line().size(); i++) {
      length += prop.line().get(i).minus(prop.line().get(i - 1)).length();
    }
    return body.cm(length);
  }
}
