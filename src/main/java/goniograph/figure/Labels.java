package goniograph.figure;

import goniograph.type.TextOutline;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Finds places for words: near what they name, off the body, apart from each other. */
final class Labels {
  /** Turns from the wanted direction, degrees. */
  private static final double[] TURNS = {0, 25, -25, 50, -50, 80, -80, 110, -110, 140, -140, 180};

  private static final double[] REACHES = {1.2, 2.2, 3.2, 4.7, 6.2, 7.7, 9.2, 11.5, 14, 17};
  private static final double GAP = .5;

  /** What covering a mm2 of a support costs against one of the body. */
  private static final double BESIDE = .2;

  private final Geometry body;
  private final Geometry around;
  private final Envelope page;
  private final List<Geometry> taken = new ArrayList<>();

  /**
   * @param body what is not to be covered
   * @param around what is better not covered: chairs and the like
   * @param page where words must stay
   */
  Labels(Geometry body, Geometry around, Envelope page) {
    this.around = around;
    this.body = body;
    this.page = page;
  }

  /** Keeps words off something. */
  void take(Geometry shape) {
    taken.add(shape);
  }

  /** The boxes that are in use. */
  List<Geometry> taken() {
    return List.copyOf(taken);
  }

  /**
   * The best place for a word.
   *
   * @param at what it names
   * @param from the word is wanted on the side away from this point
   */
  Place place(TextOutline word, Coordinate at, Coordinate from) {
    double bearing = Math.atan2(at.y - from.y, at.x - from.x);
    Place best = null;
    for (double reach : REACHES) {
      for (double turn : TURNS) {
        if (best != null && .6 * reach >= best.cost) {
          return kept(best);
        }
        Place place = candidate(word, at, bearing + Math.toRadians(turn), reach);
        if (best == null || place.cost < best.cost - 1e-9) {
          best = place;
        }
      }
    }
    if (best == null) {
      throw new IllegalStateException("no candidates");
    }
    return kept(best);
  }

  private Place kept(Place place) {
    taken.add(place.box);
    return place;
  }

  /**
   * A word's place.
   *
   * @param box what it fills with a little air
   * @param x the start of its base line
   * @param y its base line
   */
  record Place(Geometry box, double x, double y, double reach, double cost) {}

  private Place candidate(TextOutline word, Coordinate at, double bearing, double reach) {
    double halfWidth = (word.right() - word.left()) / 2 + GAP;
    double halfHeight = (word.bottom() - word.top()) / 2 + GAP;
    double dx = Math.cos(bearing);
    double dy = Math.sin(bearing);
    double edge =
        Math.min(
            halfWidth / Math.max(1e-9, Math.abs(dx)), halfHeight / Math.max(1e-9, Math.abs(dy)));
    double x = at.x + dx * (reach + edge);
    double y = at.y + dy * (reach + edge);
    Envelope box = new Envelope(x - halfWidth, x + halfWidth, y - halfHeight, y + halfHeight);
    Geometry shape = Hulls.PAPER.toGeometry(box);
    return new Place(
        shape,
        x - (word.left() + word.right()) / 2,
        y - (word.top() + word.bottom()) / 2,
        reach,
        cost(shape, box, reach));
  }

  private double cost(Geometry shape, Envelope box, double reach) {
    double cost = Hulls.both(shape, body).getArea() + .6 * reach;
    cost += BESIDE * Hulls.both(shape, around).getArea();
    for (Geometry other : taken) {
      double overlap = Hulls.both(shape, other).getArea();
      cost += overlap > 1e-6 ? 20 + 4 * overlap : 0;
    }
    return page.contains(box) ? cost : cost + 500;
  }
}
