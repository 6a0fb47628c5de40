package goniograph.type;

import goniograph.type.Runs.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Shapes text with the layout engine of the JDK (HarfBuzz): joins Arabic, builds Devanagari
 * conjuncts, places marks, kerns. Remembers what it has shaped; safe for any number of threads.
 */
public final class Shaper {
  private static final int REMEMBERED = 50_000;
  private static final Map<Key, ShapedText> SHAPED = new ConcurrentHashMap<>();

  private record Key(String text, FaceOrder order, Direction direction) {}

  private Shaper() {}

  /** The text as clusters of placed glyphs. */
  public static ShapedText shape(String text, FaceOrder order, Direction direction) {
    Key key = new Key(text, order, direction);
    ShapedText known = SHAPED.get(key);
    if (known != null) {
      return known;
    }
    ShapedText shaped = fresh(text, order, direction);
    if (SHAPED.size() >= REMEMBERED) {
      SHAPED.clear();
    }
    SHAPED.put(key, shaped);
    return shaped;
  }

  private static ShapedText fresh(String text, FaceOrder order, Direction direction) {
    String drawn = drawn(text, order);
    List<Cluster> clusters = new ArrayList<>();
    for (Run run : Runs.visual(drawn, order, direction)) {
      clusters.addAll(RunShaper.shape(drawn, run, order.language()));
    }
    return new ShapedText(clusters, Fonts.missing(text, order));
  }

  /** The text without controls and without what no face shows. */
  private static String drawn(String text, FaceOrder order) {
    StringBuilder drawn = new StringBuilder(text.length());
    text.codePoints()
        .filter(c -> !Character.isISOControl(c) && order.showing(c).isPresent())
        .forEach(drawn::appendCodePoint);
    return drawn.toString();
  }
}
