package goniograph.figure;

import goniograph.body.Vec;
import goniograph.pose.Camera;
import org.locationtech.jts.geom.Coordinate;

/**
 * A parallel projection from the scene (body heights) to the paper (mm, y down).
 *
 * @param toViewer unit vector towards the viewer
 * @param right unit vector to the right on paper
 * @param up unit vector up on paper
 * @param scale mm on paper for one body height
 */
record Projection(Vec toViewer, Vec right, Vec up, double scale) {

  static Projection of(Camera camera, double scale) {
    Vec toViewer = camera.toViewer();
    Vec right = camera.right();
    return new Projection(toViewer, right, toViewer.cross(right), scale);
  }

  /** Where a point of the scene falls on paper. */
  Coordinate at(Vec point) {
    return new Coordinate(scale * right.dot(point), -scale * up.dot(point));
  }

  /** How near a point is to the viewer, in body heights. */
  double depth(Vec point) {
    return toViewer.dot(point);
  }

  /** How far a direction points to the viewer, -1 to 1 for a unit vector. */
  double facing(Vec direction) {
    return toViewer.dot(direction);
  }

  /** A length of the scene on paper, in mm. */
  double mm(double length) {
    return scale * length;
  }
}
