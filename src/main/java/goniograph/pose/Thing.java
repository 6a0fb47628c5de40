package goniograph.pose;

import java.util.List;

/** Shapes one kind of thing where it is held. */
interface Thing {
  List<Shape> shapes(Hold hold, ThingWish wish);
}
