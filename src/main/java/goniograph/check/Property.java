package goniograph.check;

import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.library.Vocabulary.Position;
import goniograph.library.Vocabulary.Stance;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.library.Vocabulary.Surface;
import goniograph.library.Vocabulary.Type;
import goniograph.library.Vocabulary.Vision;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A property that a row of the rule table can ask for by its word, as in {@code when: held-effort}.
 * It is worked out from the fields and the pose of one step, with the top of a range.
 */
public enum Property {
  EXERCISE(situation -> Optional.of("it is an exercise")),
  HELD_EFFORT(Property::heldEffort),
  UNSTEADY_ON_THE_FEET(Property::unsteady),
  HARDER_BALANCE(Property::harderBalance),
  BAND(Property::band),
  GETS_UP(Property::getsUp),
  CHAIR_PUSHED_OR_RISEN_FROM(Property::chair);

  private static final Set<Position> ON_THE_FEET =
      Set.of(Position.STANDING, Position.LEANING, Position.STEPPING);
  private static final Set<Type> HELD_WITHOUT_EFFORT =
      Set.of(Type.STRETCH, Type.BALANCE, Type.BREATHING);
  private static final Set<Stance> UNSTEADY = Set.of(Stance.NARROW, Stance.TANDEM, Stance.ONE_LEG);
  private static final Set<SupportNeed> HOLDS =
      Set.of(SupportNeed.FINGERTIP, SupportNeed.ONE_HAND, SupportNeed.TWO_HAND);
  private static final String STAND_UP = "stand-up";
  private static final String REGION = "region-";

  private final Function<Situation, Optional<String>> reason;

  Property(Function<Situation, Optional<String>> reason) {
    this.reason = reason;
  }

  private String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** All words that a row may use. */
  public static List<String> words() {
    return Stream.concat(
            Arrays.stream(values()).map(Property::word),
            Arrays.stream(goniograph.library.Vocabulary.Region.values())
                .map(region -> REGION + Spellings.word(region)))
        .toList();
  }

  /** Why the property of the row holds, in words; empty if it does not, or if it is not known. */
  static Optional<String> reason(Situation situation) {
    String word = situation.row().when().value();
    if (word.startsWith(REGION)) {
      return region(situation, word.substring(REGION.length()));
    }
    return Arrays.stream(values())
        .filter(property -> property.word().equals(word))
        .findFirst()
        .flatMap(property -> property.reason.apply(situation));
  }

  private static Optional<String> region(Situation situation, String wanted) {
    return situation.exercise().region().stream()
        .map(region -> Spellings.word(region.value()))
        .filter(wanted::equals)
        .findFirst()
        .map(region -> "region " + region);
  }

  private static Optional<String> heldEffort(Situation situation) {
    Type type = situation.exercise().type().value();
    Optional<Quantity> hold = situation.rung().dose().dose().hold();
    Optional<Quantity> pause = situation.rung().dose().dose().amount(DoseField.TEMPO_PAUSE);
    if (type == Type.STRETCH) {
      return held(situation, hold, "hold", "stretch_hold").or(() -> effort(situation));
    }
    return HELD_WITHOUT_EFFORT.contains(type)
        ? effort(situation)
        : held(situation, hold, "hold", "isometric_hold")
            .or(() -> held(situation, pause, "tempo.pause", "isometric_hold"))
            .or(() -> effort(situation));
  }

  private static Optional<String> held(
      Situation situation, Optional<Quantity> time, String field, String limit) {
    return time.filter(given -> situation.reaches(given.inBase(), limit))
        .map(given -> field + " " + given);
  }

  private static Optional<String> effort(Situation situation) {
    return situation
        .rung()
        .dose()
        .dose()
        .effort()
        .flatMap(Range::high)
        .filter(top -> situation.reaches(BigDecimal.valueOf(top), "effort"))
        .map(top -> "effort up to " + top);
  }

  private static Optional<String> unsteady(Situation situation) {
    if (!ON_THE_FEET.contains(situation.exercise().position().value())) {
      return Optional.empty();
    }
    return situation
        .rung()
        .conditions()
        .stance()
        .map(Located::value)
        .filter(UNSTEADY::contains)
        .map(stance -> "stance " + Spellings.word(stance))
        .or(() -> situation.pose().flatMap(Property::unsteadyFeet));
  }

  private static Optional<String> unsteadyFeet(SceneFacts pose) {
    if (pose.standsOnOneFoot()) {
      return Optional.of("in the figure one foot is off the floor");
    }
    return pose.raisesHeels()
        ? Optional.of("in the figure the heels are raised")
        : Optional.empty();
  }

  private static Optional<String> harderBalance(Situation situation) {
    if (!ON_THE_FEET.contains(situation.exercise().position().value())) {
      return Optional.empty();
    }
    var conditions = situation.rung().conditions();
    if (is(conditions.vision(), Vision.CLOSED)) {
      return Optional.of("vision closed");
    }
    if (is(conditions.surface(), Surface.SOFT)) {
      return Optional.of("surface soft");
    }
    return is(conditions.headMovement(), true)
        ? Optional.of("head_movement true")
        : Optional.empty();
  }

  private static Optional<String> band(Situation situation) {
    var dose = situation.rung().dose().dose();
    return dose.word(DoseField.LOAD_BAND)
        .map(band -> "load.band " + band)
        .or(
            () ->
                dose.word(DoseField.LOAD_KIND)
                    .filter("band"::equals)
                    .map(kind -> "load.kind band"));
  }

  private static Optional<String> getsUp(Situation situation) {
    Position position = situation.exercise().position().value();
    boolean lies = Spellings.word(position).startsWith("lying-");
    return lies
        ? Optional.of("position " + Spellings.word(position))
        : risesFromASeat(situation).or(() -> leansFar(situation, position));
  }

  private static Optional<String> leansFar(Situation situation, Position position) {
    if (!ON_THE_FEET.contains(position)) {
      return Optional.empty();
    }
    return situation
        .pose()
        .map(pose -> Math.round(pose.most(MomentFacts::leanDegrees)))
        .filter(lean -> situation.reaches(BigDecimal.valueOf(lean), "lean"))
        .map(lean -> "in the figure the trunk leans " + lean + " deg");
  }

  private static Optional<String> risesFromASeat(Situation situation) {
    Optional<String> act =
        situation
            .exercise()
            .act()
            .map(Located::value)
            .filter(STAND_UP::equals)
            .map(word -> "act " + word);
    return act.or(
        () ->
            situation
                .rung()
                .dose()
                .dose()
                .amount(DoseField.SEAT_HEIGHT)
                .map(height -> "seat_height " + height));
  }

  private static Optional<String> chair(Situation situation) {
    var support = situation.rung().conditions().support();
    Optional<String> held =
        support
            .object()
            .map(Located::value)
            .filter(object -> object.startsWith("chair"))
            .filter(
                object -> support.need().map(Located::value).filter(HOLDS::contains).isPresent())
            .map(object -> "support.object " + object);
    return held.or(() -> risesFromASeat(situation));
  }

  private static <T> boolean is(Optional<Located<T>> field, T value) {
    return field.filter(given -> given.value().equals(value)).isPresent();
  }
}
