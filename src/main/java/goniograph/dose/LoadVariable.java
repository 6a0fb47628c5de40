package goniograph.dose;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What makes an exercise harder from one step of a ladder to the next. */
public enum LoadVariable {
  SETS(count(DoseField.SETS)),
  REPS(count(DoseField.REPS)),
  /** Hold, or the sum of the tempo. */
  REP_TIME(at -> DoseArithmetic.repSeconds(at.dose())),
  MASS(amount(DoseField.LOAD_MASS)),
  /** By its place in the clinic's band table. */
  BAND(at -> at.dose().word(DoseField.LOAD_BAND).flatMap(band -> place(at.bands(), band))),
  FORCE(amount(DoseField.LOAD_FORCE)),
  BODY_SHARE(amount(DoseField.LOAD_BODY_SHARE)),
  LEGS(
      at ->
          at.dose()
              .word(DoseField.LOAD_LEGS)
              .flatMap(word -> place(List.of("two-legs", "up-two-down-one", "one-leg"), word))),
  PER_DAY(count(DoseField.PER_DAY)),
  DAYS_PER_WEEK(count(DoseField.DAYS_PER_WEEK)),
  /** A lower seat is harder. */
  SEAT_HEIGHT(amount(DoseField.SEAT_HEIGHT).andThen(height -> height.map(BigDecimal::negate))),
  STEP_HEIGHT(amount(DoseField.STEP_HEIGHT)),
  SUPPORT(words("support.need", "two-hand", "one-hand", "fingertip", "hover", "none-needed")),
  STANCE(words("stance", "wide", "hip", "stride", "narrow", "tandem", "one-leg")),
  VISION(words("vision", "open", "closed")),
  SURFACE(words("surface", "firm", "soft")),
  HEAD_MOVEMENT(words("head_movement", "false", "true"));

  /** A dose as it stands on one step, with the other fields of that step and the band table. */
  record At(Dose dose, Map<String, String> others, List<String> bands) {}

  private final Function<At, Optional<BigDecimal>> hardness;

  LoadVariable(Function<At, Optional<BigDecimal>> hardness) {
    this.hardness = hardness;
  }

  /** A number that is greater the harder it is. */
  Optional<BigDecimal> hardness(At at) {
    return hardness.apply(at);
  }

  /** Its name for people: {@code rep time}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static Function<At, Optional<BigDecimal>> count(DoseField field) {
    return at -> at.dose().count(field).stream().mapToObj(BigDecimal::valueOf).findFirst();
  }

  private static Function<At, Optional<BigDecimal>> amount(DoseField field) {
    return at -> at.dose().amount(field).map(Quantity::inBase);
  }

  /** Words from the easiest to the hardest. */
  private static Function<At, Optional<BigDecimal>> words(String key, String... rising) {
    List<String> order = List.of(rising);
    return at -> Optional.ofNullable(at.others().get(key)).flatMap(word -> place(order, word));
  }

  private static Optional<BigDecimal> place(List<String> order, String word) {
    int place = order.indexOf(word);
    return place < 0 ? Optional.empty() : Optional.of(BigDecimal.valueOf(place));
  }
}
