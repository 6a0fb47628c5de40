package goniograph.sheet;

import goniograph.figure.PoseTelling;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a drawing shows, in words, for those who hear the page: position, view, support, and what
 * moves. No degrees: patients go by landmarks.
 */
record PictureWords(Wording wording, PoseTelling telling) {
  private static final int MOST_CHANGES = 3;

  /** The words of one panel. */
  String panel(int number, String caption) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        wording.say(
            "figure.shown",
            Map.of(
                "posture", wording.say("figure.posture." + telling.base()),
                "view", wording.say("figure.view." + telling.view()))));
    if (!caption.isEmpty()) {
      sentences.add(caption + ".");
    }
    telling.supports().stream()
        .map(kind -> "figure.support." + kind)
        .filter(wording::has)
        .forEach(id -> sentences.add(wording.say(id)));
    telling.changes().stream()
        .filter(change -> change.step() == number)
        .filter(change -> wording.has(phrase(change)))
        .limit(MOST_CHANGES)
        .forEach(change -> sentences.add(wording.say(phrase(change), sides(change))));
    return String.join(" ", sentences);
  }

  /** The words of the whole movement. */
  String whole() {
    int last = telling.changes().stream().mapToInt(PoseTelling.Change::step).max().orElse(1);
    return panel(last, "");
  }

  private static String phrase(PoseTelling.Change change) {
    return "figure.change."
        + change.joint().name().toLowerCase(Locale.ROOT)
        + (change.to() > change.from() ? ".more" : ".less");
  }

  private static Map<String, ?> sides(PoseTelling.Change change) {
    return Map.of("sides", change.sides().name().toLowerCase(Locale.ROOT));
  }
}
