package goniograph.dose;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a rightly spelled number, quantity or range, before their meaning is looked at.
 *
 * @param low the first or only number
 * @param range whether two dots stand in it
 * @param high the number behind the dots; without dots the same as low
 * @param unit the word behind the space, or ""
 */
record Spelled(Optional<BigDecimal> low, boolean range, Optional<BigDecimal> high, String unit) {
  private static final String NUMBER = "(-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?)";
  private static final String COUNT = "(0|[1-9][0-9]*)";
  private static final Pattern SHAPE =
      Pattern.compile(NUMBER + "?(\\.\\.(?:" + NUMBER + ")?)?(?: ([A-Za-z]+|%))?");

  /** One number of a measure with its unit, as a regular expression. */
  static String quantity(Measure measure) {
    return number(measure) + unit(measure);
  }

  /** One number of a measure or a range, open ends allowed, with its unit. */
  static String quantities(Measure measure) {
    String number = number(measure);
    return "(" + number + "(\\.\\.(" + number + ")?)?|\\.\\." + number + ")" + unit(measure);
  }

  /** A range of counts, open ends allowed; a count alone is no text. */
  static String counts() {
    return "(" + COUNT + "\\.\\.(" + COUNT + ")?|\\.\\." + COUNT + ")";
  }

  private static String number(Measure measure) {
    return (measure.signed() ? "-?" : "") + "(0|[1-9][0-9]{0,5})(\\.[0-9]{1,3})?";
  }

  private static String unit(Measure measure) {
    return measure.units().stream().map(Unit::code).collect(Collectors.joining("|", " (", ")"));
  }

  /** The parts, or nothing if the text is not of this shape. */
  static Optional<Spelled> of(String raw) {
    Matcher shape = SHAPE.matcher(raw);
    if (!shape.matches() || (shape.group(1) == null && shape.group(3) == null)) {
      return Optional.empty();
    }
    Optional<BigDecimal> low = number(shape.group(1));
    boolean range = shape.group(2) != null;
    Optional<BigDecimal> high = range ? number(shape.group(3)) : low;
    return Optional.of(
        new Spelled(low, range, high, Optional.ofNullable(shape.group(4)).orElse("")));
  }

  /** The numbers given; one value counts once. */
  List<BigDecimal> ends() {
    return Stream.of(low, high).flatMap(Optional::stream).distinct().toList();
  }

  private static Optional<BigDecimal> number(@Nullable String digits) {
    return Optional.ofNullable(digits).map(BigDecimal::new);
  }
}
