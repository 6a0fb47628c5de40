package goniograph.check;

import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What a solved pose shows, in words that name the key frame. */
final class PoseReasons {
  private PoseReasons() {}

  /** The moment with the largest value of a measure, in whole units; of several a key frame. */
  static Optional<MomentFacts> most(SceneFacts facts, ToDoubleFunction<MomentFacts> measure) {
    return facts.all().stream()
        .max(Comparator.comparingLong(moment -> Math.round(measure.applyAsDouble(moment))));
  }

  /** {@code in the figure, at end: …}. */
  static Reason shown(MomentFacts moment, String words) {
    return shown(moment.name(), words);
  }

  /** The same, of the moment with this name. */
  static Reason shown(String moment, String words) {
    return Reason.of("in the figure" + when(moment) + ": " + words);
  }

  private static String when(String name) {
    return switch (name) {
      case "" -> ", between key frames";
      case "pose" -> "";
      default -> ", at `" + name + "`";
    };
  }
}
