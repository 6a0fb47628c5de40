package goniograph.pose;

import java.util.List;

/**
 * One post of a door frame and the wall it stands in, with its skirting board; the face to the
 * person is the post's.
 */
final class DoorFrame implements Furniture {
  @Override
  public Placed place(Site site) {
    Stand stand = site.atHands(site.upright());
    double height = site.wish().heightCm();
    List<Box> boxes =
        List.of(
            stand.box(0, 9, 0, height, -9, 9),
            stand.box(9, 60, 0, 11, -7.5, 7.5),
            stand.box(9, 60, 0, height + 10, -6, 6));
    return site.placed(boxes, List.of(stand.facing(0, 0, height, -9, 9)), stand.origin());
  }
}
