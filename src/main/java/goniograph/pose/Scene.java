package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Limb;
import goniograph.body.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A pose file, solved.
 *
 * @param id the pose's id
 * @param base the base posture's word, for instance {@code sitting}
 * @param body the person drawn
 * @param view the view's word, for instance {@code side}
 * @param camera the view as angles
 * @param keys the key frames in order: one where nothing moves
 * @param motion about nine moments from the first key frame to the last, every one with contacts
 *     solved; one where nothing moves
 * @param supports what carries or steadies the body
 * @param movingLimbs the limb segments that are marked as moving
 * @param movingTrunk true where head or trunk is marked as moving
 * @param marks what is drawn on top
 * @param focus the part of the body that alone is shown
 * @param wrong how it is not to be done
 */
public record Scene(
    String id,
    String base,
    Body body,
    String view,
    Camera camera,
    List<Moment> keys,
    List<Moment> motion,
    List<Support> supports,
    Map<Side, Set<Limb>> movingLimbs,
    boolean movingTrunk,
    List<Mark> marks,
    Optional<Focus> focus,
    Optional<Moment> wrong) {
  public Scene {
    keys = List.copyOf(keys);
    motion = List.copyOf(motion);
    supports = List.copyOf(supports);
    movingLimbs = Map.copyOf(movingLimbs);
    marks = List.copyOf(marks);
  }

  /** The scene without anything drawn on top. */
  public Scene unmarked() {
    return new Scene(
        id,
        base,
        body,
        view,
        camera,
        keys,
        motion,
        supports,
        movingLimbs,
        movingTrunk,
        List.of(),
        focus,
        Optional.empty());
  }

  /** The scene on other supports. */
  public Scene with(List<Support> others) {
    return new Scene(
        id,
        base,
        body,
        view,
        camera,
        keys,
        motion,
        others,
        movingLimbs,
        movingTrunk,
        marks,
        focus,
        wrong);
  }
}
