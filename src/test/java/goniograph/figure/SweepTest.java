package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Against the general union of JTS, on random limbs: half of what the method allows on paper. */
class SweepTest {
  private final Random random = new Random(3);

  @Test
  void aLimbIsTheUnionOfItsHulls() {
    int swept = 0;
    for (int i = 0; i < 200; i++) {
      List<List<Coordinate>> rims = limb();
      Optional<Geometry> area = Sweep.chain(rims);
      if (area.isPresent()) {
        swept++;
        Geometry union = union(rims);
        double apart =
            DiscreteHausdorffDistance.distance(area.get().getBoundary(), union.getBoundary(), .2);
        assertTrue(apart < .025, i + ": " + apart);
        assertTrue(area.get().isValid());
      }
    }
    assertTrue(swept > 180, "" + swept);
  }

  /** A bent string of balls that grow and shrink smoothly, a quarter of them flat like hems. */
  private List<List<Coordinate>> limb() {
    List<List<Coordinate>> rims = new ArrayList<>();
    double bend = .04 * random.nextGaussian();
    double turn = 6 * random.nextDouble();
    double swell = random.nextDouble();
    double x = 0;
    double y = 0;
    for (int i = 0; i < 15; i++) {
      double radius = 2 + swell * Math.sin(i / 3.0) - .05 * i;
      rims.add(rim(x, y, radius, i < 11 ? 1 : .2, turn));
      turn += bend;
      x += Math.cos(turn);
      y += Math.sin(turn);
    }
    return rims;
  }

  private static List<Coordinate> rim(double x, double y, double r, double flat, double turn) {
    List<Coordinate> rim = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      double a = flat * r * Math.cos(Math.PI * i / 20);
      double b = r * Math.sin(Math.PI * i / 20);
      rim.add(
          new Coordinate(
              x + a * Math.cos(turn) - b * Math.sin(turn),
              y + a * Math.sin(turn) + b * Math.cos(turn)));
    }
    return rim;
  }

  private static Geometry union(List<List<Coordinate>> rims) {
    List<Geometry> links = new ArrayList<>();
    for (int i = 0; i + 1 < rims.size(); i++) {
      List<Coordinate> both = new ArrayList<>(rims.get(i));
      both.addAll(rims.get(i + 1));
      links.add(Hulls.hull(both));
    }
    return Hulls.union(links);
  }

  @Test
  void ballsOnOneSpotHaveNoAxis() {
    List<Coordinate> ball = rim(0, 0, 1, 1, 0);
    assertTrue(Sweep.chain(List.of(ball, ball)).isEmpty());
  }
}
