package goniograph.type;

import com.ibm.icu.text.Bidi;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Cuts text into runs of one direction and one face. */
final class Runs {
  /** A stretch of text, in reading order, of one face and one direction. */
  record Run(int start, int end, Face face, boolean rightToLeft) {}

  private Runs() {}

  /** The runs of a text from left to right as they stand on the line. */
  static List<Run> visual(String text, FaceOrder order, Direction direction) {
    if (direction.isOneRun() || isPlain(text, direction)) {
      return faces(text, 0, text.length(), order, direction == Direction.RIGHT_TO_LEFT);
    }
    Bidi bidi = new Bidi();
    bidi.setPara(text, direction.level(), null);
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < bidi.countRuns(); i++) {
      var run = bidi.getVisualRun(i);
      runs.addAll(faces(text, run.getStart(), run.getLimit(), order, run.isOddRun()));
    }
    return runs;
  }

  private static boolean isPlain(String text, Direction direction) {
    return direction == Direction.AUTO && !Bidi.requiresBidi(text.toCharArray(), 0, text.length());
  }

  private static List<Run> faces(
      String text, int start, int end, FaceOrder order, boolean rightToLeft) {
    List<Run> runs = new ArrayList<>();
    int from = start;
    Face face = null;
    for (int i = start; i < end; i += Character.charCount(text.codePointAt(i))) {
      Face next = faceOf(text.codePointAt(i), face, order);
      if (face != null && next != face) {
        runs.add(new Run(from, i, face, rightToLeft));
        from = i;
      }
      face = next;
    }
    if (face != null) {
      runs.add(new Run(from, end, face, rightToLeft));
    }
    if (rightToLeft) {
      Collections.reverse(runs);
    }
    return runs;
  }

  private static Face faceOf(int codePoint, @Nullable Face current, FaceOrder order) {
    boolean stays = current != null && Characters.leansOnPrevious(codePoint);
    if (current != null && stays && current.shows(codePoint)) {
      return current;
    }
    return order.showing(codePoint).orElse(current == null ? order.first() : current);
  }
}
