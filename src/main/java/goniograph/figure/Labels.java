package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Finds places for words: near what they name, off the body, and never on a mark, on each other or
 * off the page.
 */
final class Labels {
  /** Turns from the wanted direction, degrees. */
  private static final double[] TURNS = {0, 25, -25, 50, -50, 80, -80, 110, -110, 140, -140, 180};

  private static final double[] REACHES = {1.2, 2.2, 3.2, 4.7, 6.2, 7.7, 9.2, 11.5, 14, 17};
  private static final double GAP = .5;

  /** What covering a mm2 of the body costs. */
  private static final double COVERING = 2;

  /** What covering a mm2 of a support costs. */
  private static final double BESIDE = .3;

  /** What a mm of distance costs. */
  private static final double FAR = .6;

  /** Where nothing near is free, the whole page is searched in steps of this, mm. */
  private static final double STEP = 1.5;

  private static final int SAMPLES = 7;

  private final Covered body;
  private final Covered around;
  private final Envelope page;
  private final List<Geometry> taken = new ArrayList<>();

  /**
   * @param body what is better not covered
   * @param around what matters less: chairs and the like
   * @param page where words must stay
   */
  Labels(Covered body, Covered around, Envelope page) {
    this.around = around;
    this.body = body;
    this.page = page;
  }

  /** Keeps words off something. */
  void take(Geometry shape) {
    taken.add(shape);
  }

  /**
   * The best place for a word; empty where the page has no free one.
   *
   * @param width of the word, mm
   * @param height of the word, mm
   * @param at what it names
   * @param from the word is wanted on the side away from this point
   * @return its box, with a little air
   */
  Optional<Envelope> place(double width, double height, Coordinate at, Coordinate from) {
    Size size = new Size(width / 2 + GAP, height / 2 + GAP);
    Search search = new Search(at);
    double bearing = Math.atan2(at.y - from.y, at.x - from.x);
    for (double reach : REACHES) {
      for (double turn : TURNS) {
        Coordinate middle = size.beside(at, bearing + Math.toRadians(turn), reach);
        search.offer(size.box(middle), reach);
      }
    }
    if (search.best.isEmpty()) {
      everywhere(size, search);
    }
    search.best.ifPresent(box -> take(Hulls.PAPER.toGeometry(box)));
    return search.best;
  }

  private void everywhere(Size size, Search search) {
    for (double y = page.getMinY() + size.halfHeight; y < page.getMaxY(); y += STEP) {
      for (double x = page.getMinX() + size.halfWidth; x < page.getMaxX(); x += STEP) {
        Coordinate middle = new Coordinate(x, y);
        search.offer(size.box(middle), middle.distance(search.at));
      }
    }
  }

  /** Half the size of a word, with air. */
  private record Size(double halfWidth, double halfHeight) {
    /** The middle of the word {@code reach} mm away from a point. */
    Coordinate beside(Coordinate at, double bearing, double reach) {
      double dx = Math.cos(bearing);
      double dy = Math.sin(bearing);
      double edge =
          Math.min(
              halfWidth / Math.max(1e-9, Math.abs(dx)), halfHeight / Math.max(1e-9, Math.abs(dy)));
      return new Coordinate(at.x + dx * (reach + edge), at.y + dy * (reach + edge));
    }

    Envelope box(Coordinate middle) {
      return new Envelope(
          middle.x - halfWidth, middle.x + halfWidth, middle.y - halfHeight, middle.y + halfHeight);
    }
  }

  /** Keeps the cheapest of the places that are free. */
  private final class Search {
    private final Coordinate at;
    private Optional<Envelope> best = Optional.empty();
    private double least = Double.MAX_VALUE;

    Search(Coordinate at) {
      this.at = at;
    }

    void offer(Envelope box, double reach) {
      double cost = FAR * reach;
      if (cost >= least || !page.contains(box)) {
        return;
      }
      Geometry shape = Hulls.PAPER.toGeometry(box);
      if (taken.stream().noneMatch(shape::intersects)) {
        cost += covering(box);
        if (cost < least - 1e-9) {
          least = cost;
          best = Optional.of(box);
        }
      }
    }
  }

  /** What it costs that a word would cover something of the drawing. */
  private double covering(Envelope box) {
    double hit = 0;
    for (int i = 0; i < SAMPLES; i++) {
      for (int j = 0; j < SAMPLES; j++) {
        double x = box.getMinX() + box.getWidth() * (i + .5) / SAMPLES;
        double y = box.getMinY() + box.getHeight() * (j + .5) / SAMPLES;
        hit += body.at(x, y) ? COVERING : around.at(x, y) ? BESIDE : 0;
      }
    }
    return hit * box.getArea() / (SAMPLES * SAMPLES);
  }
}
