package goniograph.body;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Points of the body through which a part bears on what lies below it; the house's own shapes. */
public final class BearingPatch {
  private BearingPatch() {}

  /** The whole sole. */
  public static List<Vec> sole(Skeleton s, Side side) {
    List<Vec> points = new ArrayList<>(heel(s, side));
    points.addAll(forefoot(s, side));
    return points;
  }

  /** The heel alone. */
  public static List<Vec> heel(Skeleton s, Side side) {
    return across(s.limb(Limb.FOOT, side), -Lengths.HEEL, -Lengths.ANKLE, .018);
  }

  /** Ball and toes. */
  public static List<Vec> forefoot(Skeleton s, Side side) {
    Frame foot = s.limb(Limb.FOOT, side);
    List<Vec> points = new ArrayList<>(across(foot, Lengths.BALL, -Lengths.ANKLE, .027));
    points.addAll(across(Toes.frame(s, side), Lengths.TOE, -Lengths.ANKLE, .014));
    return points;
  }

  /** Buttocks and the upper 60 % of both thighs, as when sitting. */
  public static List<Vec> seat(Skeleton s) {
    List<Vec> points = new ArrayList<>(across(s.pelvis(), -.050, -.040, .070));
    for (Side side : Side.values()) {
      points.addAll(across(s.limb(Limb.THIGH, side), 0, -.6 * Lengths.THIGH, .040));
    }
    return points;
  }

  /** A kneeling knee with the toes behind it. */
  public static List<Vec> knee(Skeleton s, Side side) {
    List<Vec> points = new ArrayList<>(across(s.limb(Limb.SHANK, side), 0, 0, .020));
    points.add(Landmarks.ankle(s, side));
    points.add(Landmarks.toe(s, side));
    return points;
  }

  /** The palm, as a triangle of wrist and outer knuckles. */
  public static List<Vec> palm(Skeleton s, Side side) {
    Frame hand = s.limb(Limb.HAND, side);
    return List.of(hand.origin(), hand.point(.024, -.070, 0), hand.point(-.024, -.070, 0));
  }

  /** The forearm, from elbow to wrist. */
  public static List<Vec> forearm(Skeleton s, Side side) {
    return List.of(Landmarks.elbow(s, side), Landmarks.wrist(s, side));
  }

  /** The side to side width of trunk sections. */
  public static List<Vec> trunk(Skeleton s, List<TrunkSection> sections) {
    return sections.stream()
        .flatMap(
            section ->
                DoubleStream.of(-1, 1)
                    .mapToObj(
                        k ->
                            section
                                .frame(s)
                                .point(
                                    section.centre().plus(new Vec(0, 0, k * section.halfWidth())))))
        .toList();
  }

  /** Half the front to back width of the trunk, and the leg that lies below. */
  public static List<Vec> side(Skeleton s) {
    List<Vec> points = new ArrayList<>();
    for (TrunkSection section : TrunkSection.ALL) {
      Vec half = new Vec(section.halfDepth() / 2, 0, 0);
      points.add(section.frame(s).point(section.centre().plus(half)));
      points.add(section.frame(s).point(section.centre().minus(half)));
    }
    boolean left = Landmarks.hip(s, Side.LEFT).y() < Landmarks.hip(s, Side.RIGHT).y();
    Side below = left ? Side.LEFT : Side.RIGHT;
    points.add(Landmarks.knee(s, below));
    points.add(Landmarks.ankle(s, below));
    return points;
  }

  private static List<Vec> across(Frame frame, double x, double y, double half) {
    return List.of(frame.point(x, y, -half), frame.point(x, y, half));
  }
}
