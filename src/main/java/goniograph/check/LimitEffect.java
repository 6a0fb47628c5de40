package goniograph.check;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.library.Exercise;
import goniograph.library.Precaution.Limit;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Feet;
import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;

/** What a limit does to an exercise. */
public enum LimitEffect {
  /** It changes a step or leaves one out. */
  ACTS,
  /** It is about a field that no step has. */
  NO_SUCH_FIELD,
  /** Every step is inside it as it is. */
  PASSES_ALL;

  /** What a limit does. */
  public static LimitEffect of(Limit limit, Exercise exercise) {
    Optional<DoseField> field = DoseField.ofKey(limit.field().value());
    if (field.isPresent()
        && exercise.rungs().stream()
            .allMatch(rung -> rung.dose().dose().get(field.get()).isEmpty())) {
      return NO_SUCH_FIELD;
    }
    return exercise.rungs().stream().anyMatch(rung -> changes(limit, rung)) ? ACTS : PASSES_ALL;
  }

  private static boolean changes(Limit limit, Rung rung) {
    List<Limit> one = List.of(limit);
    Dose dose = rung.dose().dose();
    Optional<Feet> feet = Kept.feet(one);
    Optional<Feet> now = rung.conditions().feet().map(Located::value);
    return Kept.outside(limit, rung).isPresent()
        || !Kept.within(dose, one).equals(dose)
        || (feet.isPresent() && !feet.equals(now));
  }
}
