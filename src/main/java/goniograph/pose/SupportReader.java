package goniograph.pose;

import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what a pose stands on and leans on. Lengths in cm. */
final class SupportReader {
  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,3}(\\.\\d)?");
  private static final String SECOND = "second ";

  private SupportReader() {}

  /**
   * The supports of a map whose keys are their names: a kind, or {@code second} and a kind.
   * Cushions and pillows come last, because they lie on the others.
   */
  static List<SupportWish> supports(Value value, Complaint complaint) {
    List<Form.Entry> entries = value.form("the supports").map(Form::entries).orElse(List.of());
    List<SupportWish> wishes = new ArrayList<>();
    for (boolean lying : List.of(false, true)) {
      for (Form.Entry entry : entries) {
        kind(entry.key().value())
            .filter(kind -> kind.lies() == lying)
            .flatMap(kind -> support(kind, entry, wishes))
            .ifPresent(wishes::add);
      }
    }
    entries.stream()
        .filter(entry -> kind(entry.key().value()).isEmpty())
        .forEach(entry -> unknown(entry, complaint));
    return wishes;
  }

  private static Optional<SupportKind> kind(String name) {
    String word = name.startsWith(SECOND) ? name.substring(SECOND.length()) : name;
    return SupportKind.of(word).filter(kind -> kind != SupportKind.FLOOR);
  }

  private static void unknown(Form.Entry entry, Complaint complaint) {
    List<String> known =
        Arrays.stream(SupportKind.values()).skip(1).map(SupportKind::word).toList();
    complaint.unknown(
        "pose-support-unknown",
        new Phrase(entry.key().value(), entry.key().at()),
        "a support",
        known);
  }

  private static Optional<SupportWish> support(
      SupportKind kind, Form.Entry entry, List<SupportWish> others) {
    String name = entry.key().value();
    return entry
        .value()
        .form("the " + name, form -> wish(name, kind, form, others))
        .map(Located::value);
  }

  private static SupportWish wish(
      String name, SupportKind kind, Form form, List<SupportWish> others) {
    double height = cm(form, "height", 1, 250).orElse(kind.usualHeightCm());
    double bottom = kind.lies() ? bottom(form, others) : 0;
    return new SupportWish(
        name,
        kind,
        form.optional("side").as(Spellings.oneOf(Where.class)).map(Located::value),
        bottom + height,
        height,
        cm(form, "distance", -60, 200),
        cm(form, "x", -100, 100),
        kind == SupportKind.CHAIR
            && form.optional("arms").as(Spellings.TRUTH).map(Located::value).orElse(false));
  }

  /** The height of what a cushion lies on: what is typed, else the last thing under the body. */
  private static double bottom(Form form, List<SupportWish> others) {
    List<SupportWish> carriers =
        others.stream().filter(wish -> wish.kind().under() || wish.kind().seat()).toList();
    List<String> names = new ArrayList<>(List.of("floor"));
    carriers.forEach(wish -> names.add(wish.name()));
    String on =
        form.optional("on")
            .as(Spellings.oneOf(names))
            .map(Located::value)
            .orElse(names.get(names.size() - 1));
    return carriers.stream()
        .filter(wish -> wish.name().equals(on))
        .mapToDouble(SupportWish::heightCm)
        .findFirst()
        .orElse(0);
  }

  /** The centimetres behind a key that may be left out. */
  static Optional<Double> cm(Form form, String key, double min, double max) {
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
