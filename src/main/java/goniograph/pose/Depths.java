package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.List;
import java.util.stream.Stream;

/** How deep parts lie below what is under the body: the floor, a mat or a bed. */
final class Depths {
  private static final Vec DOWN = new Vec(0, -1, 0);
  private static final List<TrunkSection> ABOVE_PELVIS =
      TrunkSection.ALL.stream().filter(section -> section.joint().isPresent()).toList();

  private final Touch touch;

  Depths(Touch touch) {
    this.touch = touch;
  }

  /** A part and how deep it lies, in cm. */
  record Depth(String part, double cm) {}

  /** The part that lies deepest; its depth is 0 where none lies below. */
  Depth deepest(Skeleton s, List<Contact> contacts) {
    Body body = s.body();
    return Stream.concat(
            trunk(s), Stream.of(Side.values()).flatMap(side -> limbs(s, side, contacts)))
        .map(depth -> new Depth(depth.part, body.cm(depth.cm)))
        .filter(depth -> depth.cm > .01)
        .reduce(new Depth("", 0), (a, b) -> b.cm > a.cm ? b : a);
  }

  private Stream<Depth> trunk(Skeleton s) {
    double hips = Outline.hips(s, DOWN) - Outline.COMPRESSION;
    double trunk = Outline.trunk(s, DOWN, ABOVE_PELVIS) - Outline.COMPRESSION;
    return Stream.of(
        new Depth("hips", touch.ground(s.pelvis().origin()) + hips),
        new Depth("trunk", touch.ground(s.spine(SpineJoint.T5).origin()) + trunk),
        new Depth("head", touch.ground(Landmarks.head(s)) + Touch.head(s, DOWN)));
  }

  private Stream<Depth> limbs(Skeleton s, Side side, List<Contact> contacts) {
    Clearance clearance = new Clearance(touch);
    double knee = clearance.depth(Landmarks.knee(s, side), Lengths.KNEELING_KNEE);
    List<Contact> hands = Touch.of(contacts, side, Part.HAND, Part.FINGERTIPS, Part.FOREARM);
    List<Contact> elbows = Touch.of(contacts, side, Part.ELBOW, Part.FOREARM);
    List<Contact> feet = Touch.of(contacts, side, Part.FOOT, Part.HEEL, Part.TOES);
    List<Contact> knees = Touch.of(contacts, side, Part.KNEE);
    Vec wrist = Landmarks.wrist(s, side);
    Vec elbow = Landmarks.elbow(s, side);
    Vec ankle = Landmarks.ankle(s, side);
    return Stream.of(
        new Depth("hand", clearance.handDepth(s, side) - lower(hands, wrist)),
        new Depth("elbow", clearance.elbowDepth(s, side) - lower(elbows, elbow)),
        new Depth("knee", knee - lower(knees, Landmarks.knee(s, side))),
        new Depth("foot", clearance.footDepth(s, side) - lower(feet, ankle)));
  }

  /** How far the face that a part touches lies below the ground here: a floor beside a mat. */
  private double lower(List<Contact> contacts, Vec at) {
    return contacts.stream()
        .flatMap(c -> touch.face(c).stream())
        .filter(Surface::level)
        .mapToDouble(face -> touch.ground(at) - face.high().y())
        .filter(lower -> lower > 0)
        .max()
        .orElse(0);
  }
}
