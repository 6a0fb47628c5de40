package goniograph.figure;

import goniograph.body.BasePosture;
import goniograph.body.Body;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Limb;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Turn;
import goniograph.body.Vec;
import goniograph.pose.Box;
import goniograph.pose.Camera;
import goniograph.pose.Mark;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import goniograph.pose.Support;
import goniograph.type.TextOutline;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Scenes made by hand, without contacts, for the tests of this room. */
final class Poses {
  static final Camera SIDE = new Camera(14, 7);
  static final Camera FRONT = new Camera(90, 8);

  /** Square letters: every one as wide as it is high. */
  static final Lettering SQUARES =
      (text, size) ->
          new TextOutline(
              "M0 0h" + size + "v-" + size + "z",
              text.length() * size,
              0,
              -size,
              text.length() * size,
              0,
              List.of());

  private Poses() {}

  static Skeleton skeleton(BasePosture base, JointAngles angles, double hipHeight) {
    return Kinematics.skeleton(Body.ADULT, base.turn(), angles, new Vec(0, hipHeight, 0));
  }

  static Skeleton standing() {
    return skeleton(BasePosture.STANDING, BasePosture.STANDING.angles(), .53);
  }

  static Skeleton sitting() {
    return skeleton(BasePosture.SITTING, BasePosture.SITTING.angles(), .33);
  }

  /** One key frame, nothing around it. */
  static Scene still(Skeleton skeleton, Camera camera, Mark... marks) {
    List<Moment> pose = List.of(new Moment("pose", skeleton, List.of()));
    return new Scene(
        "still",
        "standing",
        Body.ADULT,
        "side",
        camera,
        pose,
        pose,
        List.of(),
        Map.of(),
        false,
        List.of(marks),
        Optional.empty(),
        Optional.empty());
  }

  /** The right arm rises forward by 80 degrees. */
  static Scene armRaise(Camera camera, Mark... marks) {
    JointAngles down = BasePosture.STANDING.angles();
    JointAngles up = down.with(Joint.SHOULDER, Side.RIGHT, Movement.FLEXION, 80);
    return moving(BasePosture.STANDING, down, up, .53, List.of(), camera, marks);
  }

  /** The trunk leans forward on a chair. */
  static Scene lean(Camera camera, Mark... marks) {
    JointAngles tall = BasePosture.SITTING.angles();
    JointAngles low =
        tall.with(Joint.PELVIS, Movement.TILT, 30).both(Joint.HIP, Movement.FLEXION, 116);
    return moving(BasePosture.SITTING, tall, low, .33, List.of(chair()), camera, marks);
  }

  static Scene moving(
      BasePosture base,
      JointAngles start,
      JointAngles end,
      double hipHeight,
      List<Support> supports,
      Camera camera,
      Mark... marks) {
    List<Moment> motion = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      String name = i == 0 ? "start" : i == 8 ? "end" : "";
      Skeleton skeleton = skeleton(base, start.towards(end, i / 8.0), hipHeight);
      motion.add(new Moment(name, skeleton, List.of()));
    }
    return new Scene(
        "moving",
        base.word(),
        Body.ADULT,
        "side",
        camera,
        List.of(motion.get(0), motion.get(8)),
        motion,
        supports,
        arm(Side.RIGHT),
        false,
        List.of(marks),
        Optional.empty(),
        Optional.empty());
  }

  static Map<Side, Set<Limb>> arm(Side side) {
    return Map.of(side, EnumSet.of(Limb.UPPER_ARM, Limb.FOREARM, Limb.HAND));
  }

  static Scene with(Scene scene, Map<Side, Set<Limb>> moving) {
    return new Scene(
        scene.id(),
        scene.base(),
        scene.body(),
        scene.view(),
        scene.camera(),
        scene.keys(),
        scene.motion(),
        scene.supports(),
        moving,
        scene.movingTrunk(),
        scene.marks(),
        scene.focus(),
        scene.wrong());
  }

  static Support chair() {
    return new Support(
        "chair",
        List.of(
            box(-2, 43, 0, 20, 2, 20),
            box(-20, 20.5, -18, 2, 20.5, 2),
            box(-20, 20.5, 18, 2, 20.5, 2),
            box(16, 20.5, -18, 2, 20.5, 2),
            box(16, 20.5, 18, 2, 20.5, 2),
            box(-21, 75, 0, 1.5, 15, 20)),
        true);
  }

  /** Middle and half sizes in cm. */
  static Box box(double x, double y, double z, double hx, double hy, double hz) {
    return new Box(
        new Vec(x, y, z).times(1 / 170.0), Turn.NONE, new Vec(hx, hy, hz).times(1 / 170.0));
  }

  static Mark.Angle angle(String joint) {
    return new Mark.Angle(joint, Optional.of(Side.RIGHT));
  }

  static Mark.Arrow arrow(String part) {
    return new Mark.Arrow(part, Optional.of(Side.RIGHT), Mark.Way.ALONG);
  }
}
