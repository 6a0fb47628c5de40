package goniograph.check;

import goniograph.body.Limb;
import goniograph.dose.DoseField;
import goniograph.library.Equipment;
import goniograph.library.Vocabulary.Feet;
import goniograph.library.Vocabulary.Region;
import goniograph.matter.Located;
import goniograph.pose.Pull;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What is moved, held or pulled, and what touches the skin of the feet. */
final class LoadProperties {
  private static final Set<String> OUTSIDE_THE_BODY = Set.of("mass", "band", "household", "manual");
  private static final Set<String> IN_THE_HAND = Set.of("mass", "household");
  private static final Set<Region> PULLED_BY_THE_FOOT = Set.of(Region.ANKLE, Region.FOOT);
  private static final Set<String> WEIGHTS = Set.of("dumbbell", "bottle");
  private static final String CUFF = "cuff";
  private static final String BAND = "band";

  private LoadProperties() {}

  static Optional<Reason> band(OnStep step) {
    return step.given(DoseField.LOAD_BAND)
        .or(() -> kind(step, Set.of(BAND)))
        .or(() -> bandAmongTheEquipment(step))
        .or(() -> drawn(step, Set.of(BAND), pull -> true));
  }

  /** A band that no step's load names is used on every step. */
  private static Optional<Reason> bandAmongTheEquipment(OnStep step) {
    boolean named =
        step.exercise().rungs().stream()
            .anyMatch(rung -> rung.dose().dose().word(DoseField.LOAD_BAND).isPresent());
    return step.exercise().equipment().stream()
        .map(Equipment::id)
        .filter(id -> !named && id.value().startsWith(BAND))
        .map(id -> Reason.at("equipment " + id.value(), id.at()))
        .findFirst();
  }

  /** A load beyond the body's own. */
  static Optional<Reason> loaded(OnStep step) {
    return step.given(DoseField.LOAD_MASS)
        .or(() -> step.given(DoseField.LOAD_BAND))
        .or(() -> step.given(DoseField.LOAD_FORCE))
        .or(() -> kind(step, OUTSIDE_THE_BODY))
        .or(() -> step.texts().cue("weight-in-hand"));
  }

  /** A weight, unless it is a cuff round the limb. */
  static Optional<Reason> weightInHand(OnStep step) {
    boolean cuff =
        step.exercise().equipment().stream().anyMatch(thing -> thing.id().value().startsWith(CUFF));
    return cuff
        ? Optional.empty()
        : step.given(DoseField.LOAD_MASS)
            .or(() -> kind(step, IN_THE_HAND))
            .or(() -> drawn(step, WEIGHTS, pull -> pull.limb() == Limb.HAND))
            .or(() -> step.texts().cue("weight-in-hand"));
  }

  private static Optional<Reason> kind(OnStep step, Set<String> kinds) {
    return step.dose()
        .word(DoseField.LOAD_KIND)
        .filter(kinds::contains)
        .flatMap(kind -> step.given(DoseField.LOAD_KIND));
  }

  static Optional<Reason> skinOfTheFoot(OnStep step) {
    return OnStep.field("feet", step.conditions().feet(), Set.of(Feet.BARE))
        .or(() -> bandRoundTheFoot(step));
  }

  /** A band that works the ankle or the foot is pulled by the foot. */
  private static Optional<Reason> bandRoundTheFoot(OnStep step) {
    Stream<Reason> pulled =
        step.exercise().region().stream()
            .map(Located::value)
            .filter(PULLED_BY_THE_FOOT::contains)
            .flatMap(region -> band(step).stream());
    return pulled
        .findFirst()
        .or(() -> step.texts().cue("band-round-foot"))
        .or(() -> drawn(step, Set.of(BAND), pull -> pull.limb() == Limb.FOOT));
  }

  /** A thing that the figure shows at work on a part of the body. */
  private static Optional<Reason> drawn(OnStep step, Set<String> kinds, Predicate<Pull> where) {
    return step.pose().stream()
        .flatMap(pose -> pose.scene().keys().stream())
        .flatMap(key -> key.props().stream())
        .filter(prop -> kinds.contains(prop.kind()) && prop.pulls().stream().anyMatch(where))
        .map(prop -> Reason.of("in the figure: " + prop.kind()))
        .findFirst();
  }
}
