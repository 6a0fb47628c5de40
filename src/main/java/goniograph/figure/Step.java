package goniograph.figure;

import goniograph.pose.Moment;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one panel shows: a key frame and how the body came to it.
 *
 * @param key the key frame
 * @param before the key frame before it
 * @param way the moments from there to here
 * @param marked true where the moving parts are told apart: not in the start of a movement
 */
record Step(Moment key, Optional<Moment> before, List<Moment> way, boolean marked) {
  Step {
    way = List.copyOf(way);
  }

  /** A panel for each key frame. */
  static List<Step> each(Scene scene) {
    List<Moment> keys = scene.keys();
    List<Step> steps = new ArrayList<>();
    steps.add(new Step(keys.get(0), Optional.empty(), List.of(), keys.size() == 1));
    for (int i = 1; i < keys.size(); i++) {
      List<Moment> way = scene.motion().subList(place(scene, i - 1), place(scene, i) + 1);
      steps.add(new Step(keys.get(i), Optional.of(keys.get(i - 1)), way, true));
    }
    return steps;
  }

  /** One panel: the last key frame, and the first as what was before. */
  static List<Step> together(Scene scene) {
    List<Moment> keys = scene.keys();
    Moment last = keys.get(keys.size() - 1);
    return List.of(new Step(last, Optional.of(keys.get(0)), scene.motion(), true));
  }

  /** How it is not to be done. */
  static Step wrong(Moment moment) {
    return new Step(moment, Optional.empty(), List.of(), false);
  }

  boolean wrong() {
    return key.name().equals("wrong");
  }

  /** Where a key frame stands among the moments of the motion: by its name, else by its share. */
  private static int place(Scene scene, int key) {
    String name = scene.keys().get(key).name();
    List<Moment> motion = scene.motion();
    for (int i = 0; i < motion.size(); i++) {
      if (motion.get(i).name().equals(name)) {
        return i;
      }
    }
    return (int) Math.round(key * (motion.size() - 1.0) / (scene.keys().size() - 1));
  }
}
