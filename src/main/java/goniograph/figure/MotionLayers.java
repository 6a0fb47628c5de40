package goniograph.figure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The pieces of all frames in one order: hiding the pieces that are not of a frame leaves the
 * pieces of that frame in their own order. A piece that many frames share stands once.
 */
final class MotionLayers {

  /**
   * What is painted in one go.
   *
   * @param attributes colour and pen, as SVG attributes
   * @param path its path data
   */
  record Piece(String attributes, String path) {}

  /**
   * A piece with the frames that show it.
   *
   * @param frames numbers from 0
   */
  record Layer(Piece piece, BitSet frames) {}

  private List<Layer> layers = new ArrayList<>();

  private MotionLayers() {}

  /** The layers of frames, farthest first; the same frames give the same layers. */
  static List<Layer> of(List<List<Piece>> frames) {
    MotionLayers all = new MotionLayers();
    for (int i = 0; i < frames.size(); i++) {
      all.lay(frames.get(i), i);
    }
    return List.copyOf(all.layers);
  }

  /** Puts one more frame in, along the longest common subsequence of what is there and of it. */
  private void lay(List<Piece> frame, int number) {
    int[][] longest = longest(frame);
    List<Layer> merged = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < layers.size() || j < frame.size()) {
      if (i < layers.size() && j < frame.size() && same(i, frame.get(j))) {
        merged.add(seen(layers.get(i++), number));
        j++;
      } else if (j == frame.size()
          || (i < layers.size() && longest[i + 1][j] >= longest[i][j + 1])) {
        merged.add(layers.get(i++));
      } else {
        merged.add(seen(new Layer(frame.get(j++), new BitSet()), number));
      }
    }
    layers = merged;
  }

  private boolean same(int layer, Piece piece) {
    return layers.get(layer).piece().equals(piece);
  }

  private static Layer seen(Layer layer, int number) {
    BitSet frames = (BitSet) layer.frames().clone();
    frames.set(number);
    return new Layer(layer.piece(), frames);
  }

  private int[][] longest(List<Piece> frame) {
    int[][] longest = new int[layers.size() + 1][frame.size() + 1];
    for (int i = layers.size() - 1; i >= 0; i--) {
      for (int j = frame.size() - 1; j >= 0; j--) {
        longest[i][j] =
            same(i, frame.get(j))
                ? longest[i + 1][j + 1] + 1
                : Math.max(longest[i + 1][j], longest[i][j + 1]);
      }
    }
    return longest;
  }
}
