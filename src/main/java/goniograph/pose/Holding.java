package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import java.util.List;

/**
 * What says where a held thing is at one moment.
 *
 * @param now the body at that moment
 * @param start the body in the first key frame
 * @param room the supports
 * @param hands the hands that hold it, in the order of {@link Side}
 */
record Holding(Skeleton now, Skeleton start, Room room, List<Side> hands) {
  Body body() {
    return now.body();
  }

  /** A length in cm in the scene's measure. */
  double f(double cm) {
    return body().fraction(cm);
  }
}
