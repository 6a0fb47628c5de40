package goniograph.dose;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A dose, whole or in part: what stays the same on every step, what one step changes, or both laid
 * together. Every field may be left out.
 *
 * @param values the fields given, in the order of {@link DoseField}; each of its field's type
 */
public record Dose(Map<DoseField, DoseValue> values) {
  /** A dose of which nothing is said. */
  public static final Dose NONE = new Dose(Map.of());

  public Dose {
    EnumMap<DoseField, DoseValue> ordered = new EnumMap<>(DoseField.class);
    ordered.putAll(values);
    values = Collections.unmodifiableMap(ordered);
  }

  /** The same dose with one field set. */
  public Dose with(DoseField field, DoseValue value) {
    Map<DoseField, DoseValue> more = new EnumMap<>(DoseField.class);
    more.putAll(values);
    more.put(field, value);
    return new Dose(more);
  }

  /** This dose laid over another: where both give a field, this one counts. */
  public Dose over(Dose base) {
    Map<DoseField, DoseValue> both = new EnumMap<>(DoseField.class);
    both.putAll(base.values);
    both.putAll(values);
    return new Dose(both);
  }

  /** The fields both give. */
  public List<DoseField> shared(Dose other) {
    return values.keySet().stream().filter(other.values::containsKey).toList();
  }

  /** The field, whatever it holds. */
  public Optional<DoseValue> get(DoseField field) {
    return Optional.ofNullable(values.get(field));
  }

  /** The count in this field. */
  public OptionalInt count(DoseField field) {
    return as(field, DoseValue.Count.class)
        .map(count -> OptionalInt.of(count.number()))
        .orElse(OptionalInt.empty());
  }

  /** The quantity in this field. */
  public Optional<Quantity> amount(DoseField field) {
    return as(field, DoseValue.Amount.class).map(DoseValue.Amount::quantity);
  }

  /** The word in this field. */
  public Optional<String> word(DoseField field) {
    return as(field, DoseValue.Word.class).map(DoseValue.Word::word);
  }

  /** Whether this flag is set. */
  public boolean flag(DoseField field) {
    return as(field, DoseValue.Flag.class).map(DoseValue.Flag::yes).orElse(false);
  }

  /** Effort from 0 to 10. */
  public Optional<Range<Integer>> effort() {
    return as(DoseField.EFFORT, DoseValue.Scores.class).map(DoseValue.Scores::range);
  }

  /** Sessions a day. */
  public OptionalInt perDay() {
    return count(DoseField.PER_DAY);
  }

  /** Days a week. */
  public OptionalInt daysPerWeek() {
    return count(DoseField.DAYS_PER_WEEK);
  }

  /** Rounds in a session. */
  public OptionalInt sets() {
    return count(DoseField.SETS);
  }

  /** Repetitions in a set. */
  public OptionalInt reps() {
    return count(DoseField.REPS);
  }

  /** Time a repetition is held. */
  public Optional<Quantity> hold() {
    return amount(DoseField.HOLD);
  }

  /** Time between repetitions. */
  public Optional<Quantity> relax() {
    return amount(DoseField.RELAX);
  }

  /** Time between sets and between sides. */
  public Optional<Quantity> rest() {
    return amount(DoseField.REST);
  }

  /** Weeks this dose runs. */
  public Optional<Quantity> duration() {
    return amount(DoseField.DURATION);
  }

  /** The parts of the movement's tempo that are given: lift, pause, lower, bottom. */
  public List<Quantity> tempo() {
    return Stream.of(
            DoseField.TEMPO_LIFT,
            DoseField.TEMPO_PAUSE,
            DoseField.TEMPO_LOWER,
            DoseField.TEMPO_BOTTOM)
        .flatMap(part -> amount(part).stream())
        .toList();
  }

  private <T extends DoseValue> Optional<T> as(DoseField field, Class<T> kind) {
    return get(field).filter(kind::isInstance).map(kind::cast);
  }
}
