package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** All supports of a pose where they stand, placed by the body in its first key frame. */
final class Room {
  private static final double USUAL_GAP_CM = 15;
  private static final double SEAT_DEPTH_CM = 42;
  private static final double WRIST_TO_WALL = .006;

  private final PoseFile pose;
  private final Skeleton start;
  private final List<Placed> placed;

  private Room(PoseFile pose, Skeleton start) {
    this.pose = pose;
    this.start = start;
    List<Placed> all = new ArrayList<>(List.of(Furniture.floor()));
    pose.supports().forEach(wish -> all.add(place(wish)));
    this.placed = List.copyOf(all);
  }

  /**
   * Places the supports of a pose.
   *
   * @param start the body in the first key frame, its legs solved and its arms as typed
   */
  static Room around(PoseFile pose, Skeleton start) {
    return new Room(pose, start);
  }

  /** Everything that stands here, the floor first. */
  List<Placed> all() {
    return placed;
  }

  /** What a contact touches, where it is a support. */
  Optional<Placed> find(String word) {
    return placed.stream().filter(p -> p.kind().word().equals(word)).findFirst();
  }

  private Placed place(SupportWish wish) {
    Furniture furniture = new Furniture(pose.body());
    return switch (wish.kind()) {
      case FLOOR -> Furniture.floor();
      case CHAIR -> chair(wish, furniture);
      case COUNTER -> furniture.counter(near(wish), away(wish), wish.heightCm());
      case TABLE -> furniture.table(near(wish), away(wish), wish.heightCm());
      case WALL -> wall(wish, furniture);
      case MAT, BED -> under(wish, furniture);
    };
  }

  private boolean touched(String target, Part part) {
    return pose.frames().stream()
        .flatMap(frame -> pose.contacts(frame).stream())
        .anyMatch(contact -> contact.part() == part && contact.target().equals(target));
  }

  /** Its back behind the trunk, its seat as deep as the thighs allow. */
  private Placed chair(SupportWish wish, Furniture furniture) {
    double gap = touched(wish.kind().word(), Part.BACK) ? 0 : f(1);
    double x = -backwards() - gap;
    double knees =
        Arrays.stream(Side.values()).mapToDouble(s -> Landmarks.knee(start, s).x()).min().orElse(x);
    double depth = Math.max(f(30), Math.min(f(SEAT_DEPTH_CM), knees - f(5) - x));
    return furniture.chair(new Vec(x, 0, start.pelvis().origin().z()), depth, wish.heightCm());
  }

  /** How far the trunk reaches to the back. */
  private double backwards() {
    Vec back = new Vec(-1, 0, 0);
    return Math.max(Outline.hips(start, back), Outline.trunk(start, back, TrunkSection.ALL));
  }

  static Vec away(SupportWish wish) {
    return wish.side().map(side -> new Vec(0, 0, side.sign())).orElse(new Vec(1, 0, 0));
  }

  private Vec near(SupportWish wish) {
    Vec away = away(wish);
    double gap = f(wish.distanceCm().orElse(USUAL_GAP_CM));
    return at(wish, Outline.trunkAndLegs(start, away) + gap);
  }

  /** A point of the floor so far out in a support's direction, beside the hips. */
  private Vec at(SupportWish wish, double out) {
    Vec away = away(wish);
    Vec hips = start.pelvis().origin();
    double along = f(wish.alongCm());
    return wish.side().isPresent()
        ? new Vec(hips.x() + along, 0, out * away.z())
        : new Vec(out, 0, hips.z() + along);
  }

  /** Where a distance is typed, there; else at the hands or behind the back that touch it. */
  private Placed wall(SupportWish wish, Furniture furniture) {
    if (wish.distanceCm().isEmpty() && wish.side().isEmpty()) {
      if (touched(wish.kind().word(), Part.HAND)) {
        double x =
            Arrays.stream(Side.values())
                .mapToDouble(side -> Landmarks.wrist(start, side).x())
                .max()
                .orElse(0);
        return furniture.wall(at(wish, x + WRIST_TO_WALL), away(wish), wish.heightCm());
      }
      if (touched(wish.kind().word(), Part.BACK)) {
        Vec behind = new Vec(-backwards(), 0, start.pelvis().origin().z());
        return furniture.wall(behind, new Vec(-1, 0, 0), wish.heightCm());
      }
    }
    return furniture.wall(near(wish), away(wish), wish.heightCm());
  }

  private Placed under(SupportWish wish, Furniture furniture) {
    List<Vec> points = new ArrayList<>(List.of(Landmarks.head(start), start.pelvis().origin()));
    for (Side side : Side.values()) {
      points.add(Landmarks.toe(start, side));
      points.add(Landmarks.heel(start, side));
      points.add(Landmarks.fingertip(start, side));
    }
    double from = points.stream().mapToDouble(Vec::x).min().orElse(0) - f(10);
    double to = points.stream().mapToDouble(Vec::x).max().orElse(0) + f(10);
    return furniture.under(wish.kind(), from, to, start.pelvis().origin().z(), wish.heightCm());
  }

  private double f(double cm) {
    return pose.body().fraction(cm);
  }
}
