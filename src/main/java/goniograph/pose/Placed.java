package goniograph.pose;

import goniograph.body.Vec;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A support where it stands.
 *
 * @param wish what the pose file asked for
 * @param where where it stands, seen from the person
 * @param boxes what it is made of
 * @param faces what can be touched of it
 * @param places faces with a name of their own, for instance the back of a chair
 * @param near the middle of the edge or face next to the person, at the height of the floor
 */
record Placed(
    SupportWish wish,
    Where where,
    List<Box> boxes,
    List<Surface> faces,
    Map<String, List<Surface>> places,
    Vec near) {
  Placed {
    boxes = List.copyOf(boxes);
    faces = List.copyOf(faces);
    places = Map.copyOf(places);
  }

  /** What it is. */
  SupportKind kind() {
    return wish.kind();
  }

  /** Its upper face, where it has one. */
  Optional<Surface> level() {
    return faces.stream().filter(Surface::level).findFirst();
  }

  /** Its upright face towards the person: a wall, a chair's back. */
  Optional<Surface> upright() {
    return faces.stream().filter(face -> !face.level()).findFirst();
  }

  /**
   * The face that a hand at {@code point} touches: level ones before upright ones, and of several
   * the nearest.
   */
  Optional<Surface> face(Vec point) {
    return faces.stream()
        .min(
            Comparator.comparing((Surface face) -> !face.level())
                .thenComparing(face -> face.nearest(point, 0).minus(point).length()));
  }

  /** The support as a contact's target names it: whole, or by one of its places. */
  Optional<Placed> named(String target) {
    if (target.equals(wish.name())) {
      return Optional.of(this);
    }
    return places.entrySet().stream()
        .filter(place -> target.equals(wish.name() + " " + place.getKey()))
        .map(place -> new Placed(wish, where, boxes, place.getValue(), Map.of(), near))
        .findFirst();
  }
}
