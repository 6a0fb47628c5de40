package goniograph.library;

import goniograph.dose.DoseField;
import goniograph.dose.Range;
import goniograph.library.Precaution.Within;
import goniograph.library.Vocabulary.AgeGroup;
import goniograph.library.Vocabulary.Aim;
import goniograph.library.Vocabulary.Region;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One row of the table of dose limits. Every row that covers a step counts: a row for older people
 * stands beside the one for everybody and does not replace it.
 *
 * @param scope what it holds for
 * @param field what is limited: the dotted key of a dose field, or a word of {@link #WORKED_OUT}; a
 *     file may write the key's last word alone
 * @param limit outside is an error; at the limit is inside. The word {@code true} stands for "must
 *     be given"
 * @param warn outside asks for a second look
 * @param source id of a source, or {@code common-practice}
 * @param at where the row stands
 */
public record DoseLimit(
    Scope scope,
    Located<String> field,
    Located<Within> limit,
    Optional<Located<Within>> warn,
    Located<String> source,
    Span at) {
  /** The sum of the tempo's parts. */
  public static final String TEMPO = "tempo";

  /** Time under tension in a session, on one side. */
  public static final String TENSION = "tension";

  /** Time of a session. */
  public static final String SESSION = "session";

  /** Time on a day. */
  public static final String DAY = "day";

  /** Whether something warms up before; can only be asked for. */
  public static final String WARM_UP = "warm_up";

  /** How many entries of one region a programme has on one day, of those that the row covers. */
  public static final String REGION_ENTRIES = "region_entries";

  /** What a row may limit beside the fields of the dose. */
  public static final List<String> WORKED_OUT =
      List.of(TEMPO, TENSION, SESSION, DAY, WARM_UP, REGION_ENTRIES);

  /** Whether the row asks for the field to be given, and sets no bounds. */
  public boolean asksFor() {
    return limit.value() instanceof Within.Word;
  }

  /** Whether the row holds for an exercise on one of its steps. */
  public boolean covers(Exercise exercise, Rung rung) {
    return scope.covers(exercise, rung) && (!scope.firstStep() || first(exercise, rung));
  }

  /** On the step one begins on, or on the lowest that has the field at all. */
  private boolean first(Exercise exercise, Rung rung) {
    Optional<DoseField> known = DoseField.ofKey(field.value());
    return rung.n() <= exercise.start().n()
        || exercise.rungs().stream()
            .filter(lower -> lower.n() < rung.n())
            .allMatch(lower -> known.flatMap(lower.dose().dose()::get).isEmpty());
  }

  /**
   * What a row holds for; what is left out makes no difference.
   *
   * @param types the types of exercise
   * @param aim the aim
   * @param regions regions, one of which the exercise works on
   * @param audience for whom the exercise is written; one that does not say is for adults
   * @param fromEffort the least effort, of a range the top
   * @param fromPain the least pain up to which one carries on
   * @param firstStep only where a patient begins: on the start step and below it, or on the lowest
   *     step that has the field
   */
  public record Scope(
      List<Type> types,
      Optional<Aim> aim,
      List<Region> regions,
      Optional<ForWhom> audience,
      Optional<Integer> fromEffort,
      Optional<Integer> fromPain,
      boolean firstStep) {
    public Scope {
      types = List.copyOf(types);
      regions = List.copyOf(regions);
    }

    private boolean covers(Exercise exercise, Rung rung) {
      int effort = rung.dose().dose().effort().flatMap(Range::high).orElse(0);
      int pain = rung.dose().dose().count(DoseField.PAIN_DURING_MAX).orElse(0);
      return (types.isEmpty() || types.contains(exercise.type().value()))
          && aim.filter(one -> one != exercise.aim().value()).isEmpty()
          && (regions.isEmpty() || works(exercise, regions))
          && audience.filter(one -> !one.covers(exercise.audience())).isEmpty()
          && fromEffort.filter(least -> effort < least).isEmpty()
          && fromPain.filter(least -> pain < least).isEmpty();
    }

    private static boolean works(Exercise exercise, List<Region> regions) {
      return exercise.region().stream().anyMatch(one -> regions.contains(one.value()));
    }
  }

  /**
   * An audience, or part of it.
   *
   * @param group the age group
   * @param ages years of a child; a child whose age is not given is inside every range
   */
  public record ForWhom(AgeGroup group, Optional<Range<Integer>> ages) {

    private boolean covers(Optional<Located<Audience>> given) {
      AgeGroup written = given.map(one -> one.value().group()).orElse(AgeGroup.ADULT);
      Optional<Integer> age = given.flatMap(one -> one.value().age());
      return written == group
          && ages.filter(range -> age.filter(years -> !range.contains(years)).isPresent())
              .isEmpty();
    }
  }
}
