package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.Body;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Movement;
import goniograph.body.Reading;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.junit.jupiter.api.Test;

/**
 * Contacts found by Apache Commons Math's BOBYQA (Powell 2009), which knows nothing of two-bone
 * triangles, pins or fits: it moves the pelvis and bends joints until the distances of the parts
 * from what they touch are least. Both find the same body within .3 cm and .5 degrees.
 */
class ContactOptimiserTest {
  private static final double CM = .3;
  private static final double DEGREES = .5;
  private static final double MAT = 1 / 170.0;

  /** The body as the optimiser sees it: pelvis place and joint angles to a sum of squares. */
  private static double[] least(double[] start, double[] scale, Function<double[], double[]> far) {
    MultivariateFunction sum =
        q -> {
          double total = 0;
          for (double r : far.apply(scaled(q, scale))) {
            total += r * r;
          }
          return 1e6 * total;
        };
    double[] zero = new double[start.length];
    for (int i = 0; i < start.length; i++) {
      zero[i] = start[i] / scale[i];
    }
    double[] low = new double[start.length];
    double[] high = new double[start.length];
    for (int i = 0; i < start.length; i++) {
      low[i] = zero[i] - 2;
      high[i] = zero[i] + 2;
    }
    double[] found = zero;
    for (int round = 0; round < 4; round++) {
      found =
          new BOBYQAOptimizer(2 * start.length + 1, .1, 1e-9)
              .optimize(
                  new MaxEval(100_000),
                  new ObjectiveFunction(sum),
                  GoalType.MINIMIZE,
                  new InitialGuess(found),
                  new SimpleBounds(low, high))
              .getPoint();
    }
    return scaled(found, scale);
  }

  private static double[] scaled(double[] q, double[] scale) {
    double[] all = q.clone();
    for (int i = 0; i < all.length; i++) {
      all[i] *= scale[i];
    }
    return all;
  }

  private static Skeleton solved(PoseFile pose, int key) {
    return PoseSolver.solve(pose).scene().keys().get(key).skeleton();
  }

  private static double angle(PoseFile pose, Skeleton s, Joint joint, Side side) {
    Movement movement = joint == Joint.ANKLE ? Movement.DORSIFLEXION : Movement.FLEXION;
    return Reading.of(s, pose.base().turn()).get(joint, side, movement);
  }

  @Test
  void stepping() {
    PoseFile pose =
        Poses.of(
            """
            pose: up
            base: stepping
            supports: {step: {height: 20}}
            contacts: [left foot on floor, right foot on step]
            angles: {hip right: flexion 50, knee right: flexion 62}
            """);
    Skeleton ours = solved(pose, 0);
    Vec left = Landmarks.ankle(ours, Side.LEFT);
    double ahead = Landmarks.ankle(ours, Side.RIGHT).x() - left.x();
    double[] q =
        least(
            new double[] {.5, 50, 62},
            new double[] {.1, 20, 20},
            at -> {
              Skeleton s = legs(pose, new Vec(left.x(), at[0], 0), at[1], at[2]);
              Vec ankle = Landmarks.ankle(s, Side.RIGHT);
              return new double[] {
                Landmarks.ankle(s, Side.LEFT).y() - Lengths.ANKLE,
                ankle.y() - Lengths.ANKLE - 20 / 170.0,
                ankle.x() - left.x() - ahead
              };
            });
    assertEquals(170 * q[0], 170 * ours.pelvis().origin().y(), CM);
    assertEquals(q[1], angle(pose, ours, Joint.HIP, Side.RIGHT), DEGREES);
    assertEquals(q[2], angle(pose, ours, Joint.KNEE, Side.RIGHT), DEGREES);
  }

  private static Skeleton legs(PoseFile pose, Vec root, double hip, double knee) {
    JointAngles angles =
        pose.angles(pose.frames().get(0))
            .with(Joint.HIP, Side.RIGHT, Movement.FLEXION, hip)
            .with(Joint.KNEE, Side.RIGHT, Movement.FLEXION, knee);
    return Kinematics.skeleton(Body.ADULT, pose.base().turn(), angles, root);
  }

  @Test
  void halfKneeling() {
    PoseFile pose =
        Poses.of(
            """
            pose: half
            base: half-kneeling
            supports: {mat: {}}
            contacts: [right knee on mat, right toes on mat, left foot on mat]
            angles: {hip right: extension 6, ankle right: plantarflexion 40, hip left: flexion 80, knee left: flexion 85}
            """);
    Skeleton ours = solved(pose, 0);
    Vec foot = Landmarks.ankle(ours, Side.LEFT);
    double[] q =
        least(
            new double[] {.28, 80, 2, 8, 85, 90},
            new double[] {.1, 20, 10, 10, 20, 20},
            at -> {
              JointAngles angles =
                  pose.angles(pose.frames().get(0))
                      .with(Joint.HIP, Side.LEFT, Movement.FLEXION, at[1])
                      .with(Joint.HIP, Side.LEFT, Movement.ABDUCTION, at[2])
                      .with(Joint.HIP, Side.LEFT, Movement.ROTATION, at[3])
                      .with(Joint.KNEE, Side.LEFT, Movement.FLEXION, at[4])
                      .with(Joint.KNEE, Side.RIGHT, Movement.FLEXION, at[5]);
              Skeleton s = Kinematics.skeleton(Body.ADULT, Turn.NONE, angles, new Vec(0, at[0], 0));
              Vec ankle = Landmarks.ankle(s, Side.LEFT);
              double turn = (at[3] - 8) / 2000;
              return new double[] {
                Landmarks.knee(s, Side.RIGHT).y() - Lengths.KNEELING_KNEE - MAT,
                LegSolver.toePoint(s, Side.RIGHT).y() - MAT,
                ankle.x() - foot.x(),
                ankle.y() - Lengths.ANKLE - MAT,
                ankle.z() - foot.z(),
                turn
              };
            });
    assertEquals(170 * q[0], 170 * ours.pelvis().origin().y(), CM);
    assertEquals(q[1], angle(pose, ours, Joint.HIP, Side.LEFT), DEGREES);
    assertEquals(q[4], angle(pose, ours, Joint.KNEE, Side.LEFT), DEGREES);
    assertEquals(q[5], angle(pose, ours, Joint.KNEE, Side.RIGHT), DEGREES);
  }

  @Test
  void bridge() {
    PoseFile pose =
        Poses.of(
            """
            pose: bridge
            base: lying-on-back
            supports: {mat: {}}
            contacts: [upper back on mat, feet on mat]
            start: {hip both: flexion 50, knee both: flexion 107}
            end: {pelvis: tilt back 15, hip both: flexion 0, knee both: flexion 80}
            """);
    Skeleton down = solved(pose, 0);
    Skeleton ours = solved(pose, 1);
    Vec feet = Landmarks.ankle(down, Side.RIGHT);
    double chest = down.spine(SpineJoint.T5).origin().x();
    double[] q =
        least(
            new double[] {0, .17, -15, 80},
            new double[] {.1, .1, 20, 20},
            at -> {
              JointAngles angles =
                  pose.angles(pose.frames().get(1))
                      .with(Joint.PELVIS, Movement.TILT, at[2])
                      .both(Joint.KNEE, Movement.FLEXION, at[3]);
              Skeleton s =
                  Kinematics.skeleton(
                      Body.ADULT, pose.base().turn(), angles, new Vec(at[0], at[1], 0));
              Vec ankle = Landmarks.ankle(s, Side.RIGHT);
              return new double[] {
                lowestOfUpperBack(s) + .008 - MAT,
                s.spine(SpineJoint.T5).origin().x() - chest,
                ankle.x() - feet.x(),
                ankle.y() - feet.y()
              };
            });
    JointAngles found = Reading.of(ours, pose.base().turn());
    assertEquals(170 * q[0], 170 * ours.pelvis().origin().x(), CM);
    assertEquals(170 * q[1], 170 * ours.pelvis().origin().y(), CM);
    assertEquals(q[2], found.get(Joint.PELVIS, Movement.TILT), DEGREES);
    assertEquals(q[3], found.get(Joint.KNEE, Side.RIGHT, Movement.FLEXION), DEGREES);
    assertEquals(0, found.get(Joint.HIP, Side.RIGHT, Movement.FLEXION), DEGREES);
  }

  /** The lowest of many points round the sections, and of the base of a straight neck. */
  private static double lowestOfUpperBack(Skeleton s) {
    List<TrunkSection> sections = new ArrayList<>();
    for (SpineJoint joint : List.of(SpineJoint.T8, SpineJoint.T5, SpineJoint.T2)) {
      sections.add(TrunkSection.at(joint));
    }
    TrunkSection neck = TrunkSection.at(SpineJoint.C7);
    Vec up = Lengths.spine(SpineJoint.C7).minus(Lengths.spine(SpineJoint.T2));
    sections.add(
        new TrunkSection(
            java.util.Optional.of(SpineJoint.T2),
            neck.centre().plus(up),
            neck.halfWidth(),
            neck.halfDepth()));
    double lowest = Double.POSITIVE_INFINITY;
    for (TrunkSection section : sections) {
      for (int degrees = 0; degrees < 360; degrees++) {
        double a = Math.toRadians(degrees);
        Vec rim = new Vec(section.halfDepth() * Math.cos(a), 0, section.halfWidth() * Math.sin(a));
        lowest = Math.min(lowest, section.frame(s).point(section.centre().plus(rim)).y());
      }
    }
    return lowest;
  }

  /**
   * Knees on the mat, wrists as high as a flat palm has them, the trunk as near as may be to level.
   */
  @Test
  void handsAndKnees() {
    PoseFile pose =
        Poses.of(
            """
            pose: fours
            base: hands-and-knees
            supports: {mat: {}}
            contacts: [knees on mat, hands on mat]
            angles: {hip both: flexion 84, shoulder both: flexion 86}
            """);
    Skeleton ours = solved(pose, 0);
    JointAngles angles = pose.angles(pose.frames().get(0));
    double[] q =
        least(
            new double[] {.28, 0},
            new double[] {.1, 10},
            at -> {
              Skeleton s =
                  Kinematics.skeleton(
                      Body.ADULT,
                      pose.base().turn(),
                      angles.with(Joint.PELVIS, Movement.TILT, at[1]),
                      new Vec(0, at[0], 0));
              double knees = Landmarks.knee(s, Side.LEFT).y() - Lengths.KNEELING_KNEE - MAT;
              double wrists = Landmarks.wrist(s, Side.LEFT).y() - .011 - MAT;
              // As the method weighs: both wrists once, the pitch .15 a radian.
              return new double[] {
                30 * knees, 30 * knees, wrists, wrists, .15 * Math.toRadians(at[1])
              };
            });
    JointAngles found = Reading.of(ours, pose.base().turn());
    assertEquals(170 * q[0], 170 * ours.pelvis().origin().y(), CM);
    assertEquals(q[1], found.get(Joint.PELVIS, Movement.TILT), DEGREES);
  }
}
