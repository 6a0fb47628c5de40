package goniograph.pose;

import java.util.ArrayList;
import java.util.List;

/** A table on four legs. */
final class Table implements Furniture {
  @Override
  public Placed place(Site site) {
    Stand stand = site.overLap();
    double height = site.wish().heightCm();
    List<Box> boxes = new ArrayList<>(stand.legs(4, 56, height - 3.5, 50, 5));
    boxes.add(stand.box(0, 60, height - 3.5, height, -55, 55));
    return site.placed(boxes, List.of(stand.level(0, 60, height, -55, 55)), stand.origin());
  }
}
