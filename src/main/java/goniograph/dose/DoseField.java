package goniograph.dose;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The fields of a dose, by FITT-VP: frequency, intensity, time, type, volume, progression. Each
 * with its dotted key under {@code dose}, the same in a ladder step, and what it takes.
 */
public enum DoseField {
  PER_DAY("frequency.per_day", count(1, 6)),
  DAYS_PER_WEEK("frequency.days_per_week", count(1, 7)),
  GAP("frequency.gap", amount(Measure.HOURS)),
  REST_DAY_BETWEEN("frequency.rest_day_between", new ValueType.Flag()),
  EFFORT("effort", new ValueType.Scores()),
  PAIN_DURING_MAX("pain.during_max", count(0, 10)),
  PAIN_REASON("pain.reason", new ValueType.Id("tendon-pain-is-expected")),
  LOAD_KIND("load.kind", words("none", "body", "part-body", "mass", "band", "household", "manual")),
  LOAD_MASS("load.mass", amount(Measure.MASS)),
  LOAD_BAND("load.band", new ValueType.Id("band-light")),
  LOAD_FORCE("load.force", amount(Measure.FORCE)),
  LOAD_BODY_SHARE("load.body_share", amount(Measure.SHARE)),
  LOAD_LEGS("load.legs", words("two-legs", "up-two-down-one", "one-leg")),
  LENGTH_START("load.length_start", amount(Measure.LENGTH)),
  LENGTH_END("load.length_end", amount(Measure.LENGTH)),
  SEAT_HEIGHT("seat_height", amount(Measure.LENGTH)),
  STEP_HEIGHT("step_height", amount(Measure.LENGTH)),
  HOLD("hold", amount(Measure.SECONDS)),
  RELAX("relax", amount(Measure.SECONDS)),
  REST("rest", amount(Measure.SECONDS)),
  TEMPO_LIFT("tempo.lift", amount(Measure.SECONDS)),
  TEMPO_PAUSE("tempo.pause", amount(Measure.SECONDS)),
  TEMPO_LOWER("tempo.lower", amount(Measure.SECONDS)),
  TEMPO_BOTTOM("tempo.bottom", amount(Measure.SECONDS)),
  SETS("sets", count(1, 99)),
  REPS("reps", count(1, 999)),
  DURATION("duration", amount(Measure.WEEKS)),
  /** Declared only to be compared with what is worked out, as are the next three. */
  VOLUME_SESSION("volume.session", amount(Measure.SECONDS)),
  VOLUME_DAY("volume.day", amount(Measure.SECONDS)),
  VOLUME_WEEK("volume.week", amount(Measure.SECONDS)),
  VOLUME_WEEK_REPS("volume.week_reps", count(1, 99_999));

  private final String key;
  private final ValueType type;

  DoseField(String key, ValueType type) {
    this.key = key;
    this.type = type;
  }

  /** The dotted key, for instance {@code frequency.per_day}. */
  public String key() {
    return key;
  }

  /** What it takes. */
  public ValueType type() {
    return type;
  }

  /** The field with this dotted key. */
  public static Optional<DoseField> ofKey(String key) {
    return Arrays.stream(values()).filter(field -> field.key.equals(key)).findFirst();
  }

  private static ValueType count(int least, int most) {
    return new ValueType.ACount(new Counts(least, most));
  }

  private static ValueType amount(Measure measure) {
    return new ValueType.AnAmount(measure);
  }

  private static ValueType words(String... words) {
    return new ValueType.OneOf(List.of(words));
  }
}
