package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.BasePosture;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.pose.Camera;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** A mirrored pose from the mirrored side is the mirrored drawing (figure method, section 16). */
class MirrorTest {
  /**
   * Parts with rounded hollows: the corners of the roundings fall elsewhere on the same arcs. On
   * the others corners are left out that lie within .004 mm of the line.
   */
  private static final Set<Kind> SMOOTHED = Set.of(Kind.TRUNK, Kind.HEAD, Kind.HAND, Kind.FOOT);

  private static final JointAngles POSE =
      BasePosture.STANDING
          .angles()
          .with(Joint.SHOULDER, Side.RIGHT, Movement.ABDUCTION, 70)
          .with(Joint.ELBOW, Side.RIGHT, Movement.FLEXION, 60)
          .with(Joint.HIP, Side.LEFT, Movement.FLEXION, 50)
          .with(Joint.KNEE, Side.LEFT, Movement.FLEXION, 80)
          .with(Joint.NECK, Movement.BEND, 20)
          .with(Joint.THORACIC, Movement.TURN, 15);

  @Test
  void everyPartOfAMirroredPoseIsTheMirroredPart() {
    for (Camera camera : List.of(Poses.SIDE, Poses.FRONT, new Camera(48, 10))) {
      Camera across = new Camera(180 - camera.yaw(), camera.elevation());
      Map<Part.Id, Geometry> pose = outlines(POSE, camera);
      Map<Part.Id, Geometry> mirrored = outlines(POSE.mirrored(), across);
      pose.forEach(
          (id, outline) ->
              assertMirrored(id, outline, Objects.requireNonNull(mirrored.get(mirror(id)))));
    }
  }

  private static Map<Part.Id, Geometry> outlines(JointAngles angles, Camera camera) {
    Skeleton skeleton = Poses.skeleton(BasePosture.STANDING, angles, .53);
    Map<Part.Id, Geometry> outlines = new HashMap<>();
    SceneParts parts = new SceneParts(Projection.of(camera, 46), Poses.still(skeleton, camera));
    parts.body(skeleton).forEach(part -> outlines.put(part.id(), part.outline()));
    return outlines;
  }

  private static Part.Id mirror(Part.Id id) {
    Optional<Side> side = id.side().map(Side::other);
    return new Part.Id(id.kind(), side, id.number());
  }

  /** The boundaries are nowhere farther apart. */
  private static void assertMirrored(Part.Id id, Geometry a, Geometry b) {
    Geometry flipped = AffineTransformation.scaleInstance(-1, 1).transform(a);
    double apart = DiscreteHausdorffDistance.distance(flipped.getBoundary(), b.getBoundary());
    double within = !SMOOTHED.contains(id.kind()) ? .005 : .02;
    assertEquals(0, apart, within, id.toString());
    assertEquals(flipped.getArea(), b.getArea(), .05);
  }
}
