package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The envelope against the union of hulls, which is the second, slower way. */
class TubeTest {

  private static Tube tube(double length, double bend, double... radii) {
    List<Coordinate> centres = new ArrayList<>();
    List<Double> sizes = new ArrayList<>();
    Profile profile = Profile.of(radii);
    for (int i = 0; i <= 20; i++) {
      double t = i / 20.0;
      centres.add(new Coordinate(length * t, bend * Math.sin(Math.PI * t)));
      sizes.add(profile.radius(t));
    }
    return new Tube(centres, sizes);
  }

  @Test
  void theEnvelopeIsTheUnionOfTheHulls() {
    for (double length : new double[] {20, 14, 9, 6}) {
      Tube limb = tube(length, .6, 0, 3.4, .2, 3.3, .6, 2.6, 1, 2.1);
      Geometry both = Hulls.both(limb.area(), limb.hulls());
      double all = Hulls.union(limb.area(), limb.hulls()).getArea();
      assertEquals(1, both.getArea() / all, .006, "length " + length);
    }
  }

  @Test
  void aStraightTubeOfOneWidthIsAStadium() {
    // Area of a stadium: rectangle and circle; a cap of 14 chords leaves 0.8 % of the circle out.
    double expected = 20 * 2 * 2 + Math.PI * 4;
    assertEquals(expected, tube(20, 0, 0, 2, 1, 2).area().getArea(), .15);
  }

  @Test
  void towardsTheViewerTheLargestCircleIsLeft() {
    double r = 3.5;
    assertEquals(Math.PI * r * r, tube(.01, 0, 0, r, 1, 2).area().getArea(), .6);
  }

  @Test
  void everyTubeIsSound() {
    Random random = new Random(20261125);
    for (int i = 0; i < 400; i++) {
      Tube tube =
          tube(
              20 * random.nextDouble(),
              6 * random.nextDouble() - 3,
              0,
              .5 + 3 * random.nextDouble(),
              .5,
              .5 + 3 * random.nextDouble(),
              1,
              .5 + 3 * random.nextDouble());
      Geometry area = tube.area();
      assertTrue(area.isValid() && !area.isEmpty(), "tube " + i);
      double all = Hulls.union(area, tube.hulls()).getArea();
      assertTrue(Hulls.both(area, tube.hulls()).getArea() > .94 * all, "tube " + i);
    }
  }
}
