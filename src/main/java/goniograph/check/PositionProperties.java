package goniograph.check;

import goniograph.dose.DoseArithmetic;
import goniograph.dose.DoseField;
import goniograph.library.Vocabulary.LiesOn;
import goniograph.library.Vocabulary.Position;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.pose.BodyPlaces;
import goniograph.pose.Contact;
import goniograph.pose.MomentFacts;
import goniograph.pose.Part;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Where the body is, what carries it, and what follows when it gets up. */
final class PositionProperties {
  private static final Set<Position> ON_THE_FEET =
      Set.of(Position.STANDING, Position.LEANING, Position.STEPPING);
  private static final Set<Position> ON_A_KNEE =
      Set.of(Position.KNEELING, Position.HALF_KNEELING, Position.HANDS_AND_KNEES);
  private static final Set<LiesOn> LOW = Set.of(LiesOn.FLOOR, LiesOn.MAT);
  private static final String STAND_UP = "stand-up";
  private static final String CHAIR = "chair";

  private PositionProperties() {}

  static Optional<Reason> region(OnStep step, String wanted) {
    return step.exercise().region().stream()
        .filter(region -> Spellings.word(region.value()).equals(wanted))
        .map(region -> Reason.at("region " + wanted, region.at()))
        .findFirst();
  }

  static Optional<Reason> onTheFeet(OnStep step) {
    return step.position(ON_THE_FEET);
  }

  static Optional<Reason> stepping(OnStep step) {
    return step.position(Set.of(Position.STEPPING)).or(() -> step.given(DoseField.STEP_HEIGHT));
  }

  static Optional<Reason> standsAtAnyMoment(OnStep step) {
    return onTheFeet(step).or(() -> stepping(step)).or(() -> risesFromASeat(step));
  }

  static Optional<Reason> risesFromASeat(OnStep step) {
    return step.exercise()
        .act()
        .filter(act -> act.value().equals(STAND_UP))
        .map(act -> Reason.at("act " + act.value(), act.at()))
        .or(() -> step.given(DoseField.SEAT_HEIGHT));
  }

  static Optional<Reason> getsUp(OnStep step, Limits limits) {
    return step.lying()
        ? step.position(Set.of(step.position()))
        : risesFromASeat(step)
            .or(() -> leansFar(step, limits))
            .or(() -> headBelowHips(step, limits));
  }

  private static Optional<Reason> leansFar(OnStep step, Limits limits) {
    return step.pose()
        .filter(pose -> step.onTheFeet())
        .flatMap(pose -> PoseReasons.most(pose.facts(), MomentFacts::leanDegrees))
        .filter(moment -> limits.reached("lean", moment.leanDegrees()))
        .map(moment -> leans(moment));
  }

  static Reason leans(MomentFacts moment) {
    return PoseReasons.shown(
        moment, "the trunk leans " + Math.round(moment.leanDegrees()) + " deg");
  }

  /** A body that lies with its hips lifted is not upside down. */
  static Optional<Reason> headBelowHips(OnStep step, Limits limits) {
    return step.pose()
        .filter(pose -> !step.lying())
        .flatMap(
            pose ->
                pose.scene().keys().stream()
                    .filter(
                        key ->
                            limits.reached(
                                "head_below", BodyPlaces.headBelowHipsCm(key.skeleton())))
                    .findFirst())
        .map(key -> PoseReasons.shown(key.name(), "the head is below the hips"));
  }

  static Optional<Reason> liesOnTheFloor(OnStep step) {
    return OnStep.field("lies_on", step.exercise().liesOn(), LOW)
        .or(() -> step.texts().cue("on-the-floor"));
  }

  /** Lying on the back, not propped up, for a whole session of some length. */
  static Optional<Reason> flatOnTheBack(OnStep step, Limits limits) {
    return step.position(Set.of(Position.LYING_ON_BACK))
        .filter(lies -> step.pose().map(Solved::facts).filter(f -> propped(f, limits)).isEmpty())
        .flatMap(
            lies ->
                DoseArithmetic.workload(step.dose(), step.exercise().sides().value())
                    .filter(work -> limits.reached("session", work.sessionSeconds()))
                    .map(
                        work ->
                            new Reason(
                                lies.words() + ", " + work.sessionSeconds() + " s a session",
                                lies.at())));
  }

  /** Whether the chest is never nearer to level than this, measured from upright. */
  private static boolean propped(SceneFacts facts, Limits limits) {
    return facts.all().stream()
        .noneMatch(moment -> limits.reached("lean", Math.abs(moment.leanDegrees())));
  }

  static Optional<Reason> weightOnAKnee(OnStep step) {
    return step.position(ON_A_KNEE)
        .or(
            () ->
                contacts(step, Part.KNEE)
                    .map(touch -> Reason.of("in the figure: " + touch.words()))
                    .findFirst());
  }

  static Optional<Reason> legCarriesTheBody(OnStep step) {
    return standsAtAnyMoment(step).or(() -> step.position(Set.of(Position.HALF_KNEELING)));
  }

  static Optional<Reason> chair(OnStep step) {
    var support = step.conditions().support();
    boolean held =
        support.need().map(Located::value).filter(SupportNeed.NONE_NEEDED::equals).isEmpty();
    return support
        .object()
        .filter(object -> held && object.value().startsWith(CHAIR))
        .map(object -> Reason.at("support.object " + object.value(), object.at()))
        .or(() -> risesFromASeat(step))
        .or(
            () ->
                Stream.of(Part.HAND, Part.FINGERTIPS)
                    .flatMap(part -> contacts(step, part))
                    .filter(touch -> touch.target().startsWith(CHAIR))
                    .map(touch -> Reason.of("in the figure: " + touch.words()))
                    .findFirst());
  }

  private static Stream<Contact> contacts(OnStep step, Part part) {
    List<MomentFacts> keys = step.pose().map(pose -> pose.facts().keys()).orElse(List.of());
    return keys.stream()
        .flatMap(key -> key.misses().stream())
        .map(miss -> miss.contact())
        .filter(contact -> contact.part() == part);
  }
}
