package goniograph.dose;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What makes an exercise harder from one step of a ladder to the next. */
public enum LoadVariable {
  SETS(count(DoseField.SETS), DoseField.SETS),
  REPS(count(DoseField.REPS), DoseField.REPS),
  /** Hold, or the sum of the tempo. */
  REP_TIME(
      (step, stock) -> DoseArithmetic.repSeconds(step.dose()),
      DoseField.HOLD,
      DoseField.TEMPO_LIFT,
      DoseField.TEMPO_PAUSE,
      DoseField.TEMPO_LOWER,
      DoseField.TEMPO_BOTTOM),
  /** None at all is 0. */
  MASS(
      (step, stock) ->
          amount(DoseField.LOAD_MASS).apply(step, stock).or(() -> Optional.of(BigDecimal.ZERO)),
      DoseField.LOAD_MASS),
  /** By its place in the clinic's band table, the first is 1; none at all is 0. */
  BAND(LoadVariable::band, DoseField.LOAD_BAND),
  FORCE(amount(DoseField.LOAD_FORCE), DoseField.LOAD_FORCE),
  BODY_SHARE(amount(DoseField.LOAD_BODY_SHARE), DoseField.LOAD_BODY_SHARE),
  LEGS(
      (step, stock) -> step.dose().word(DoseField.LOAD_LEGS).flatMap(word -> place(legs(), word)),
      DoseField.LOAD_LEGS),
  /** The same band pulled out further. */
  BAND_LENGTH(amount(DoseField.LENGTH_END), DoseField.LENGTH_END),
  PER_DAY(count(DoseField.PER_DAY), DoseField.PER_DAY),
  DAYS_PER_WEEK(count(DoseField.DAYS_PER_WEEK), DoseField.DAYS_PER_WEEK),
  /** A lower seat is harder. */
  SEAT_HEIGHT(
      (step, stock) -> amount(DoseField.SEAT_HEIGHT).apply(step, stock).map(BigDecimal::negate),
      DoseField.SEAT_HEIGHT),
  STEP_HEIGHT(amount(DoseField.STEP_HEIGHT), DoseField.STEP_HEIGHT),
  RANGE((step, stock) -> step.degrees()),
  SUPPORT(words("support.need", "two-hand", "one-hand", "fingertip", "hover", "none-needed")),
  STANCE(words("stance", "wide", "hip", "stride", "narrow", "tandem", "one-leg")),
  VISION(words("vision", "open", "closed")),
  SURFACE(words("surface", "firm", "soft")),
  HEAD_MOVEMENT(words("head_movement", "false", "true"));

  private static final Set<LoadVariable> BALANCE =
      Set.of(SUPPORT, STANCE, VISION, SURFACE, HEAD_MOVEMENT);

  private final BiFunction<StepLoad, StockTables, Optional<BigDecimal>> hardness;
  private final List<DoseField> fields;

  LoadVariable(
      BiFunction<StepLoad, StockTables, Optional<BigDecimal>> hardness, DoseField... fields) {
    this.hardness = hardness;
    this.fields = List.of(fields);
  }

  /** A number that is greater the harder it is. */
  Optional<BigDecimal> hardness(StepLoad step, StockTables stock) {
    return hardness.apply(step, stock);
  }

  /** The fields of the dose that it is worked out from. */
  public List<DoseField> fields() {
    return fields;
  }

  /** Whether it is one of the words about balance. */
  public boolean ofBalance() {
    return BALANCE.contains(this);
  }

  /**
   * An item that a clinic can hand out.
   *
   * @param hardness as {@link LoadVariable#hardness}
   * @param spelling as front matter spells it
   */
  public record Item(BigDecimal hardness, String spelling) {}

  /**
   * The items that a step may go to, easiest first; empty for what has no table, and nothing for
   * what may rise by any amount.
   */
  Optional<List<Item>> items(StockTables stock) {
    return switch (this) {
      case MASS -> Optional.of(items(stock.weights(), BigDecimal::plus));
      case SEAT_HEIGHT -> Optional.of(items(stock.seats(), BigDecimal::negate));
      case STEP_HEIGHT -> Optional.of(items(stock.steps(), BigDecimal::plus));
      case BAND -> Optional.of(places(stock.bands().stream().map(ids -> ids.get(0)).toList()));
      case LEGS -> Optional.of(places(legs()));
      case FORCE, BODY_SHARE -> Optional.of(List.of());
      default -> Optional.empty();
    };
  }

  /** Its name for people: {@code rep time}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static List<Item> items(List<Quantity> table, Function<BigDecimal, BigDecimal> hardness) {
    return table.stream()
        .map(item -> new Item(hardness.apply(item.inBase()), item.toString()))
        .toList();
  }

  private static List<Item> places(List<String> words) {
    return IntStream.range(0, words.size())
        .mapToObj(place -> new Item(BigDecimal.valueOf(place + 1L), words.get(place)))
        .toList();
  }

  private static Optional<BigDecimal> band(StepLoad step, StockTables stock) {
    Optional<String> id = step.dose().word(DoseField.LOAD_BAND);
    if (id.isEmpty()) {
      return Optional.of(BigDecimal.ZERO);
    }
    return IntStream.range(0, stock.bands().size())
        .filter(place -> stock.bands().get(place).contains(id.get()))
        .mapToObj(place -> BigDecimal.valueOf(place + 1L))
        .findFirst();
  }

  private static List<String> legs() {
    return List.of("two-legs", "up-two-down-one", "one-leg");
  }

  private static BiFunction<StepLoad, StockTables, Optional<BigDecimal>> count(DoseField field) {
    return (step, stock) ->
        step.dose().count(field).stream().mapToObj(BigDecimal::valueOf).findFirst();
  }

  private static BiFunction<StepLoad, StockTables, Optional<BigDecimal>> amount(DoseField field) {
    return (step, stock) -> step.dose().amount(field).map(Quantity::inBase);
  }

  /** Words from the easiest to the hardest. */
  private static BiFunction<StepLoad, StockTables, Optional<BigDecimal>> words(
      String key, String... rising) {
    List<String> order = List.of(rising);
    return (step, stock) ->
        Optional.ofNullable(step.words().get(key)).flatMap(word -> place(order, word));
  }

  private static Optional<BigDecimal> place(List<String> order, String word) {
    int place = order.indexOf(word);
    return place < 0 ? Optional.empty() : Optional.of(BigDecimal.valueOf(place + 1L));
  }
}
