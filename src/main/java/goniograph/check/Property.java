package goniograph.check;

import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Region;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A property that a row of a rule table can ask for by its word, as in {@code when: held-effort}.
 * It is worked out from the fields, the texts and the solved pose of one step, with the top of a
 * range.
 */
public enum Property {
  EXERCISE((step, limits) -> Optional.of(Reason.of("it is an exercise"))),
  HELD_EFFORT(EffortProperties::heldEffort),
  ISOMETRIC_HOLD(EffortProperties::isometricHold),
  EFFORT(EffortProperties::effort),
  AEROBIC((step, limits) -> EffortProperties.aerobic(step)),
  HARD_WORK(EffortProperties::hardWork),
  UNSTEADY_ON_THE_FEET((step, limits) -> BalanceProperties.unsteady(step)),
  HARDER_BALANCE(BalanceProperties::harderBalance),
  VISION_CLOSED((step, limits) -> BalanceProperties.visionClosed(step)),
  ON_THE_FEET((step, limits) -> PositionProperties.onTheFeet(step)),
  STEPPING((step, limits) -> PositionProperties.stepping(step)),
  STANDS_AT_ANY_MOMENT((step, limits) -> PositionProperties.standsAtAnyMoment(step)),
  GETS_UP(PositionProperties::getsUp),
  HEAD_BELOW_HIPS(PositionProperties::headBelowHips),
  LIES_ON_THE_FLOOR((step, limits) -> PositionProperties.liesOnTheFloor(step)),
  FLAT_ON_THE_BACK(PositionProperties::flatOnTheBack),
  WEIGHT_ON_A_KNEE((step, limits) -> PositionProperties.weightOnAKnee(step)),
  LEG_CARRIES_THE_BODY((step, limits) -> PositionProperties.legCarriesTheBody(step)),
  CHAIR_PUSHED_OR_RISEN_FROM((step, limits) -> PositionProperties.chair(step)),
  BENT_OR_TURNED_SPINE(SpineProperties::bentOrTurned),
  HIP_PAST_LIMIT(HipProperties::pastLimit),
  BAND((step, limits) -> LoadProperties.band(step)),
  WEIGHT_IN_HAND((step, limits) -> LoadProperties.weightInHand(step)),
  LOADED((step, limits) -> LoadProperties.loaded(step)),
  SKIN_OF_THE_FOOT((step, limits) -> LoadProperties.skinOfTheFoot(step)),
  HEAT_COLD_TAPE_OR_BRACE(
      texts -> texts.cue("hot-or-cold").or(() -> texts.cue("tape")).or(() -> texts.cue("brace"))),
  HEAT_OR_COLD(texts -> texts.cue("hot-or-cold")),
  TAPE(texts -> texts.cue("tape"));

  /** How a property of a step is worked out. */
  @FunctionalInterface
  interface OfStep {
    Optional<Reason> reason(OnStep step, Limits limits);
  }

  private static final String REGION = "region-";

  private final OfStep ofStep;
  private final Function<Texts, Optional<Reason>> ofTexts;

  Property(OfStep ofStep) {
    this.ofStep = ofStep;
    this.ofTexts = texts -> Optional.empty();
  }

  /** A property that an entry without a dose can have too. */
  Property(Function<Texts, Optional<Reason>> ofTexts) {
    this.ofStep = (step, limits) -> ofTexts.apply(step.texts());
    this.ofTexts = ofTexts;
  }

  private String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** All words that a row may use. */
  public static List<String> words() {
    return Stream.concat(
            Arrays.stream(values()).map(Property::word), Region.WORDS.stream().map(REGION::concat))
        .toList();
  }

  /** Why a step has the property of this word; empty if it has not, or if there is no such word. */
  static Optional<Reason> reason(String word, OnStep step, Limits limits) {
    return word.startsWith(REGION)
        ? PositionProperties.region(step, word.substring(REGION.length()))
        : named(word).flatMap(property -> property.ofStep.reason(step, limits));
  }

  /** Why texts alone have the property of this word. */
  static Optional<Reason> reason(String word, Texts texts) {
    return named(word).flatMap(property -> property.ofTexts.apply(texts));
  }

  /** Whether the patient stands at any moment of a step, as its fields say. */
  public static boolean stands(Exercise exercise, Rung rung) {
    OnStep step = new OnStep(exercise, rung, Optional.empty(), Texts.of(exercise));
    return PositionProperties.standsAtAnyMoment(step).isPresent();
  }

  private static Optional<Property> named(String word) {
    return Arrays.stream(values()).filter(property -> property.word().equals(word)).findFirst();
  }
}
