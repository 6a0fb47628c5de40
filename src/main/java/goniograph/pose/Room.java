package goniograph.pose;

import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All supports of a pose where they stand, placed by the body in its first key frame. */
final class Room {
  private final List<Placed> placed;

  private Room(List<Placed> placed) {
    this.placed = List.copyOf(placed);
  }

  /**
   * Places the supports of a pose.
   *
   * @param start the body in the first key frame, its legs solved and its arms as typed
   */
  static Room around(PoseFile pose, Skeleton start) {
    List<SupportWish> wishes = new ArrayList<>(List.of(SupportWish.FLOOR));
    wishes.addAll(pose.supports());
    return new Room(
        wishes.stream()
            .map(wish -> wish.kind().furniture().place(new Site(pose, start, wish)))
            .toList());
  }

  /** Everything that stands here, the floor first. */
  List<Placed> all() {
    return placed;
  }

  /**
   * What a contact touches, where it is a support. A place of a support, for instance {@code chair
   * back}, comes as that support with only that place's faces.
   */
  Optional<Placed> find(String target) {
    return placed.stream().flatMap(p -> p.named(target).stream()).findFirst();
  }

  /** The face that a hand or foot at {@code point} touches of a contact's target. */
  Optional<Surface> face(String target, Vec point) {
    return find(target).flatMap(p -> p.face(point));
  }

  /** The height of the highest level face below a point; a cushion does not count. */
  double heightBelow(Vec point) {
    return placed.stream()
        .filter(p -> !p.kind().lies())
        .flatMap(p -> p.faces().stream())
        .filter(face -> face.level() && face.below(point))
        .mapToDouble(face -> face.high().y())
        .max()
        .orElse(0);
  }
}
