package goniograph.check;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.Range;
import goniograph.library.Conditions;
import goniograph.library.Exercise;
import goniograph.library.LocatedDose;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Position;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.pose.Solved;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One exercise on one step, as properties look at it.
 *
 * @param exercise the exercise
 * @param rung the step, with the whole dose and all conditions
 * @param pose its pose, if that could be solved
 * @param texts what its texts say
 */
record OnStep(Exercise exercise, Rung rung, Optional<Solved> pose, Texts texts) {
  private static final Set<Position> ON_THE_FEET =
      Set.of(Position.STANDING, Position.LEANING, Position.STEPPING);

  Dose dose() {
    return rung.dose().dose();
  }

  Conditions conditions() {
    return rung.conditions();
  }

  Type type() {
    return exercise.type().value();
  }

  Position position() {
    return exercise.position().value();
  }

  boolean onTheFeet() {
    return ON_THE_FEET.contains(position());
  }

  boolean lying() {
    return Spellings.word(position()).startsWith("lying-");
  }

  /** {@code position standing}, where the position is one of these. */
  Optional<Reason> position(Collection<Position> wanted) {
    return field("position", Optional.of(exercise.position()), wanted);
  }

  /** {@code stance tandem}, where a field holds one of these words. */
  static <E extends Enum<E>> Optional<Reason> field(
      String name, Optional<Located<E>> field, Collection<E> wanted) {
    return field
        .filter(given -> wanted.contains(given.value()))
        .map(given -> Reason.at(name + " " + Spellings.word(given.value()), given.at()));
  }

  /** A reason about a dose field, with its place. */
  Reason reason(DoseField field, String words) {
    return new Reason(words, rung.dose().at(field));
  }

  /** {@code load.band band-light}, where the field is given. */
  Optional<Reason> given(DoseField field) {
    LocatedDose dose = rung.dose();
    return dose.dose().get(field).map(value -> reason(field, field.key() + " " + value.spelling()));
  }

  /** The top of the effort's range. */
  OptionalInt topEffort() {
    return dose().effort().flatMap(Range::high).stream().mapToInt(Integer::intValue).findFirst();
  }
}
