package goniograph.figure;

import goniograph.body.Vec;
import goniograph.pose.Box;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Where a part is in depth. */
sealed interface Solid {
  /** How near the part is to the viewer where it is seen at {@code c}, in body heights. */
  double depthAt(Coordinate c, Projection paper);

  /** The mean depth of the whole part. */
  double depth(Projection paper);

  /** A limb, by its bones: two points or more from the proximal end. */
  record Bones(List<Vec> line) implements Solid {
    public Bones {
      line = List.copyOf(line);
    }

    @Override
    public double depthAt(Coordinate c, Projection paper) {
      double best = Double.MAX_VALUE;
      double depth = depth(paper);
      for (int i = 0; i + 1 < line.size(); i++) {
        double t = nearest(paper.at(line.get(i)), paper.at(line.get(i + 1)), c);
        Vec point = line.get(i).towards(line.get(i + 1), t);
        double far = paper.at(point).distance(c);
        if (far < best) {
          best = far;
          depth = paper.depth(point);
        }
      }
      return depth;
    }

    private static double nearest(Coordinate a, Coordinate b, Coordinate c) {
      double dx = b.x - a.x;
      double dy = b.y - a.y;
      double square = dx * dx + dy * dy;
      double t = square < 1e-12 ? .5 : ((c.x - a.x) * dx + (c.y - a.y) * dy) / square;
      return Math.min(1, Math.max(0, t));
    }

    @Override
    public double depth(Projection paper) {
      return line.stream().mapToDouble(paper::depth).average().orElse(0);
    }

    Vec proximal() {
      return line.get(0);
    }

    Vec distal() {
      return line.get(line.size() - 1);
    }
  }

  /** A ball; its depth is that of its middle. */
  record Globe(Vec centre) implements Solid {
    @Override
    public double depthAt(Coordinate c, Projection paper) {
      return depth(paper);
    }

    @Override
    public double depth(Projection paper) {
      return paper.depth(centre);
    }
  }

  /** A box; the depth is the middle of the way the line of sight takes through it. */
  record Block(Box box) implements Solid {
    @Override
    public double depthAt(Coordinate c, Projection paper) {
      Vec onPaper =
          paper.right().times(c.x / paper.scale()).plus(paper.up().times(-c.y / paper.scale()));
      Vec from = box.axes().invert(onPaper.minus(box.centre()));
      Vec way = box.axes().invert(paper.toViewer());
      double[] in = {-1e9, 1e9};
      clip(in, from.x(), way.x(), box.half().x());
      clip(in, from.y(), way.y(), box.half().y());
      clip(in, from.z(), way.z(), box.half().z());
      return in[0] <= in[1] ? (in[0] + in[1]) / 2 : depth(paper);
    }

    private static void clip(double[] in, double from, double way, double half) {
      if (Math.abs(way) < 1e-9) {
        return;
      }
      double a = (-half - from) / way;
      double b = (half - from) / way;
      in[0] = Math.max(in[0], Math.min(a, b));
      in[1] = Math.min(in[1], Math.max(a, b));
    }

    @Override
    public double depth(Projection paper) {
      return paper.depth(box.centre());
    }
  }
}
