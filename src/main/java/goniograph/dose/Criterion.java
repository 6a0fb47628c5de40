package goniograph.dose;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The closed vocabulary of going up and down a ladder. */
public enum Criterion {
  ALL_REPS_DONE_DAYS(new ValueType.ACount(new Counts(1, 99)), Use.UP),
  ALL_REPS_DONE_SESSIONS(new ValueType.ACount(new Counts(1, 99)), Use.UP),
  PAIN_AT_MOST(new ValueType.ACount(Counts.SCORE), Use.UP, Use.LIMIT),
  EFFORT_AT_MOST(new ValueType.ACount(Counts.SCORE), Use.UP, Use.LIMIT),
  NEXT_MORNING(new ValueType.OneOf(List.of("settled")), Use.UP, Use.LIMIT),
  GRABS_AT_MOST(new ValueType.ACount(new Counts(0, 99)), Use.UP, Use.LIMIT),
  FORM_LOST_BEFORE_REPS(new ValueType.ACount(new Counts(1, 999)), Use.EVENT),
  NEAR_FALL(new ValueType.ACount(new Counts(1, 99)), Use.EVENT);

  /** Where a criterion may stand. */
  public enum Use {
    /** {@code go_up_when}: all must hold. */
    UP("go_up_when"),
    /** {@code go_down_unless}: one step down if any no longer holds. */
    LIMIT("go_down_unless"),
    /** {@code go_down_when}: one step down if any happens that often. */
    EVENT("go_down_when");

    private final String key;

    Use(String key) {
      this.key = key;
    }

    /** The key in front matter. */
    public String key() {
      return key;
    }
  }

  private final ValueType type;
  private final Set<Use> uses;

  Criterion(ValueType type, Use first, Use... more) {
    this.type = type;
    this.uses = EnumSet.of(first, more);
  }

  /** Its key in front matter, for instance {@code pain_at_most}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What it takes. */
  public ValueType type() {
    return type;
  }

  /** Whether it may stand there. */
  public boolean fits(Use use) {
    return uses.contains(use);
  }

  /** The criterion with this key. */
  public static Optional<Criterion> ofKey(String key) {
    return Arrays.stream(values()).filter(criterion -> criterion.key().equals(key)).findFirst();
  }
}
