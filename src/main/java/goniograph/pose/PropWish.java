package goniograph.pose;

import java.util.List;

/** A thing that is held or lies against the body, as a pose file asks for it. */
public sealed interface PropWish permits BandWish, ThingWish {
  /** The author's word for it, by which contacts call it. */
  String word();

  /** True where it stands on the floor and may bear weight: a walking stick. */
  default boolean onFloor() {
    return false;
  }

  /** Left and right swapped. */
  PropWish mirrored();

  /** The thing at one moment. */
  Prop at(Holding holding);

  /** What it is fastened to, where that stands in no other list: a door. */
  default List<Support> fixtures(Holding holding) {
    return List.of();
  }
}
