package goniograph.pose;

import goniograph.matter.Spelling;
import java.util.Optional;
import java.util.regex.Pattern;

/** A mass in kilograms, bare: the unit of every mass in a pose file; above 0, up to 50. */
final class Kilograms {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,2}(\\.\\d{1,2})?");

  static final Spelling<Double> SPELLING =
      (raw, refusal) -> {
        double value = NUMBER.matcher(raw).matches() ? Double.parseDouble(raw) : Double.NaN;
        if (!(value > 0 && value <= 50)) {
          refusal.because(
              "pose-mass",
              "`" + raw + "` is not a number of kilograms above 0, up to 50.",
              "Write the number alone, for instance `2`.");
          return Optional.empty();
        }
        return Optional.of(value);
      };

  private Kilograms() {}
}
