package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.figure.MotionLayers.Layer;
import goniograph.figure.MotionLayers.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MotionLayersTest {
  private static List<Piece> frame(String paths) {
    return paths.chars().mapToObj(c -> new Piece("", Character.toString(c))).toList();
  }

  private static String shown(List<Layer> layers, int frame) {
    StringBuilder out = new StringBuilder();
    layers.stream()
        .filter(layer -> layer.frames().get(frame))
        .forEach(layer -> out.append(layer.piece().path()));
    return out.toString();
  }

  @Test
  void whatFramesShareStandsOnce() {
    List<Layer> layers = MotionLayers.of(List.of(frame("fAcB"), frame("fabcB"), frame("fcxB")));
    assertEquals("f: {0, 1, 2}", layers.get(0).piece().path() + ": " + layers.get(0).frames());
    assertEquals(7, layers.size());
  }

  /** The definition of what is sought, over frames that repeat and reorder their pieces. */
  @Test
  void everyFrameComesBackWholeAndInOrder() {
    Random random = new Random(20261125);
    for (int round = 0; round < 200; round++) {
      List<String> frames = new ArrayList<>();
      for (int i = 0; i < 9; i++) {
        StringBuilder frame = new StringBuilder();
        random.ints(random.nextInt(12), 0, 5).forEach(c -> frame.append((char) ('a' + c)));
        frames.add(frame.toString());
      }
      List<Layer> layers = MotionLayers.of(frames.stream().map(MotionLayersTest::frame).toList());
      List<String> seen = IntStream.range(0, 9).mapToObj(number -> shown(layers, number)).toList();
      assertEquals(frames, seen);
    }
  }
}
