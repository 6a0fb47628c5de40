package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MotionTest {
  private final Motion motion =
      Motion.of(Poses.armRaise(Poses.SIDE), FigureOptions.STANDARD).orElseThrow();

  @Test
  void whatStandsStillHasNoMotion() {
    assertTrue(
        Motion.of(Poses.still(Poses.standing(), Poses.SIDE), FigureOptions.STANDARD).isEmpty());
  }

  /** Legs and far arm stand in the one group that never changes, and nothing stands twice. */
  @Test
  void whatDoesNotMoveIsDrawnOnce() {
    int still = 0;
    for (String group : motion.svg("x", "").split("(?=<g)")) {
      still += group.startsWith("<g>") ? group.length() : 0;
    }
    assertTrue(still > 1000, still + " characters");
    List<String> paths = List.of(motion.svg("x", "").split("<path "));
    assertEquals(paths.size(), Set.copyOf(paths).size());
  }

  @Test
  void allNamesBeginWithThePrefixAndTheStyleStandsApart() {
    String svg = motion.svg("right-1", "An arm \"rises\"");
    assertTrue(svg.contains("aria-label=\"An arm &quot;rises&quot;\""));
    assertFalse(svg.contains("<style"));
    for (String name : svg.split("class=\"")) {
      assertTrue(name.startsWith("<svg") || name.startsWith("right-1-"), name);
    }
    for (String line : motion.style("right-1").split("\n")) {
      assertTrue(line.matches("(\\.|@keyframes )right-1-.*"), line);
    }
  }

  @Test
  void theSameSceneGivesTheSameBytes() {
    Motion again = Motion.of(Poses.armRaise(Poses.SIDE), FigureOptions.STANDARD).orElseThrow();
    assertEquals(motion.svg("x", "w"), again.svg("x", "w"));
    assertEquals(motion.style("x"), again.style("x"));
  }
}
