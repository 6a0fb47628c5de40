package goniograph.body;

import java.util.List;

/**
 * A second set of segment masses and centres, laid on the same joints: de Leva 1996, J Biomech
 * 29:1223, table 4, with the alternative end points vertex-C7, C7-middle of hips, knee-ankle and
 * wrist-fingertip, as transcribed openly.
 *
 * @param name the segment
 * @param mass of the body, percent; of one side for limbs
 * @param centre from the first end, percent of the segment's length
 * @param millimetres the segment's length in the sample
 */
record DeLeva(String name, double mass, double centre, double millimetres) {
  static final List<DeLeva> MEN =
      List.of(
          new DeLeva("head", 6.94, 50.02, 242.9),
          new DeLeva("trunk", 43.46, 51.38, 603.3),
          new DeLeva("upper arm", 2.71, 57.72, 281.7),
          new DeLeva("forearm", 1.62, 45.74, 268.9),
          new DeLeva("hand", .61, 36.24, 187.9),
          new DeLeva("thigh", 14.16, 40.95, 422.2),
          new DeLeva("shank", 4.33, 43.95, 440.3),
          new DeLeva("foot", 1.37, 44.15, 258.1));

  static final List<DeLeva> WOMEN =
      List.of(
          new DeLeva("head", 6.68, 48.41, 243.7),
          new DeLeva("trunk", 42.57, 49.64, 614.8),
          new DeLeva("upper arm", 2.55, 57.54, 275.1),
          new DeLeva("forearm", 1.38, 45.59, 264.3),
          new DeLeva("hand", .56, 34.27, 170.1),
          new DeLeva("thigh", 14.78, 36.12, 368.5),
          new DeLeva("shank", 4.81, 43.52, 438.6),
          new DeLeva("foot", 1.29, 40.14, 228.3));

  /** From the first end to the centre in the sample, mm: the same for every choice of ends. */
  double toCentre() {
    return centre / 100 * millimetres;
  }

  /** The mass of a whole body by a table, percent. */
  static double whole(List<DeLeva> table) {
    double sum = 0;
    for (DeLeva row : table) {
      sum += row.mass * (row.paired() ? 2 : 1);
    }
    return sum;
  }

  /** The centre of mass of a skeleton by a table. */
  static Vec centre(List<DeLeva> table, Skeleton s) {
    Vec sum = Vec.ZERO;
    for (DeLeva row : table) {
      for (Side side : row.paired() ? Side.values() : new Side[] {Side.LEFT}) {
        sum = sum.plus(row.at(s, side).times(row.mass));
      }
    }
    return sum.times(1 / whole(table));
  }

  private boolean paired() {
    return !name.equals("head") && !name.equals("trunk");
  }

  private Vec at(Skeleton s, Side side) {
    return first(s, side).towards(second(s, side), centre / 100);
  }

  private Vec first(Skeleton s, Side side) {
    return switch (name) {
      case "head" -> Landmarks.vertex(s);
      case "trunk" -> TrunkSection.at(SpineJoint.C7).middle(s);
      case "upper arm" -> Landmarks.shoulder(s, side);
      case "forearm" -> Landmarks.elbow(s, side);
      case "hand" -> Landmarks.wrist(s, side);
      case "thigh" -> Landmarks.hip(s, side);
      case "shank" -> Landmarks.knee(s, side);
      default -> Landmarks.heel(s, side);
    };
  }

  private Vec second(Skeleton s, Side side) {
    return switch (name) {
      case "head" -> TrunkSection.at(SpineJoint.C7).middle(s);
      case "trunk" -> s.pelvis().origin();
      case "upper arm" -> Landmarks.elbow(s, side);
      case "forearm" -> Landmarks.wrist(s, side);
      case "hand" -> Landmarks.fingertip(s, side);
      case "thigh" -> Landmarks.knee(s, side);
      case "shank" -> Landmarks.ankle(s, side);
      default -> Landmarks.toe(s, side);
    };
  }
}
