package goniograph.pose;

import goniograph.body.Side;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what a pose stands on, leans on and holds: supports and the band. Lengths in cm. */
final class SupportReader {
  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,3}(\\.\\d)?");
  private static final double DOOR_DISTANCE = 50;

  private SupportReader() {}

  /** The supports of a map whose keys are their kinds. */
  static List<SupportWish> supports(Value value, Complaint complaint) {
    return value.form("the supports").map(Form::entries).orElse(List.of()).stream()
        .flatMap(entry -> support(entry, complaint).stream())
        .toList();
  }

  private static Optional<SupportWish> support(Form.Entry entry, Complaint complaint) {
    Optional<SupportKind> kind =
        SupportKind.of(entry.key().value()).filter(k -> k != SupportKind.FLOOR);
    if (kind.isEmpty()) {
      List<String> known =
          Arrays.stream(SupportKind.values()).map(SupportKind::word).skip(1).toList();
      complaint.unknown(
          "pose-support-unknown",
          new Phrase(entry.key().value(), entry.key().at()),
          "a support",
          known);
      return Optional.empty();
    }
    return entry
        .value()
        .form("the " + kind.get().word(), form -> wish(kind.get(), form))
        .map(Located::value);
  }

  private static SupportWish wish(SupportKind kind, Form form) {
    return new SupportWish(
        kind,
        form.optional("side").as(Spellings.oneOf(Side.class)).map(Located::value),
        cm(form, "height", 1, 250).orElse(kind.usualHeightCm()),
        cm(form, "distance", 0, 200),
        cm(form, "x", -100, 100).orElse(0.0));
  }

  /** The band of the map of props, the one prop there is. */
  static Optional<BandWish> band(Value props) {
    return props
        .form("the props", form -> form.optional("band").form("the band", SupportReader::band))
        .flatMap(Located::value)
        .map(Located::value);
  }

  private static BandWish band(Form form) {
    return new BandWish(
        form.optional("from")
            .as(Spellings.oneOf(BandWish.From.class))
            .map(Located::value)
            .orElse(BandWish.From.HANDS),
        cm(form, "height", 0, 250).orElse(0.0),
        cm(form, "distance", 0, 300).orElse(DOOR_DISTANCE));
  }

  private static Optional<Double> cm(Form form, String key, double min, double max) {
    return form.optional(key).as(centimetres(min, max)).map(Located::value);
  }

  /** A number of centimetres, bare: the unit of every length in a pose file. */
  static Spelling<Double> centimetres(double min, double max) {
    return (raw, refusal) -> {
      boolean number = NUMBER.matcher(raw).matches();
      double value = number ? Double.parseDouble(raw) : Double.NaN;
      if (!(value >= min && value <= max)) {
        refusal.because(
            "pose-length",
            "`"
                + raw
                + "` is not a number of centimetres from "
                + whole(min)
                + " to "
                + whole(max)
                + ".",
            "Write the number alone, for instance `45`.");
        return Optional.empty();
      }
      return Optional.of(value);
    };
  }

  private static String whole(double number) {
    return Integer.toString((int) number);
  }
}
