package goniograph.check.rules;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.dose.Quantity;
import goniograph.dose.Sides;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.RangeLimit;
import goniograph.pose.Extreme;
import goniograph.pose.PoseFile;
import goniograph.pose.Scene;
import goniograph.pose.Solved;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A solved pose that leaves the limits the entry itself sets. */
public final class PoseEntryRange implements PoseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "pose-entry-range",
          "At some moment of the solved movement a joint is outside the entry's own `range`, or"
              + " `range` names a joint or movement that poses do not know. Whole degrees count.",
          "The entry promises the clinician a limit that the drawing breaks.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "range: { hip: flexion -15..15 deg, knee:",
              "range: { hip: «flexion 0..15 deg», knee:"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, PoseFile pose, Solved solved) {
    return exercise.rungs().stream()
        .filter(
            rung ->
                rung.conditions().figure().filter(id -> id.value().equals(pose.id())).isPresent())
        .flatMap(rung -> rung.range().stream())
        .distinct()
        .flatMap(limit -> finding(limit, sides(exercise, solved.scene()), solved).stream());
  }

  /** The sides that a limit without a side word binds. */
  private static List<Side> sides(Exercise exercise, Scene scene) {
    Sides.Mode mode = exercise.sides().value().mode();
    boolean one =
        mode == Sides.Mode.LEFT || mode == Sides.Mode.RIGHT || mode == Sides.Mode.AFFECTED;
    List<Side> moving =
        Arrays.stream(Side.values())
            .filter(side -> !scene.movingLimbs().getOrDefault(side, java.util.Set.of()).isEmpty())
            .toList();
    return one && !moving.isEmpty() ? moving : List.of(Side.values());
  }

  private Optional<Finding> finding(RangeLimit limit, List<Side> sides, Solved solved) {
    String[] words = limit.joint().value().split(" ", 2);
    Optional<Joint> joint = Joint.of(words[0]);
    Optional<Movement.Word> movement =
        Movement.of(limit.movement())
            .filter(word -> joint.filter(j -> j.movements().contains(word.movement())).isPresent());
    if (joint.isEmpty() || movement.isEmpty()) {
      return Optional.of(unknown(limit));
    }
    List<Side> bound = words.length == 1 ? sides : named(words[1]);
    String breaches =
        freedoms(joint.get(), movement.get().movement(), bound)
            .flatMap(freedom -> breach(freedom, movement.get().sign(), limit, solved).stream())
            .collect(Collectors.joining("; "));
    return breaches.isEmpty()
        ? Optional.empty()
        : Optional.of(
            error(
                limit.degrees().at(),
                "The figure leaves this range: " + breaches + ".",
                "Change the pose, or the range if a clinician agrees."));
  }

  private Finding unknown(RangeLimit limit) {
    List<String> joints = Arrays.stream(Joint.values()).map(Joint::word).toList();
    return error(
        limit.joint().at(),
        "`"
            + limit.joint().value()
            + ": "
            + limit.movement()
            + "` is no joint and movement of poses.",
        "Write for instance `knee: flexion 0..90 deg`. Joints: " + String.join(", ", joints) + ".");
  }

  private static List<Side> named(String word) {
    return Arrays.stream(Side.values())
        .filter(side -> side.name().toLowerCase(Locale.ROOT).equals(word))
        .toList();
  }

  private static Stream<Freedom> freedoms(Joint joint, Movement movement, List<Side> sides) {
    return joint.paired()
        ? sides.stream().map(side -> Freedom.of(joint, side, movement))
        : Stream.of(Freedom.of(joint, movement));
  }

  private static Optional<String> breach(
      Freedom freedom, int sign, RangeLimit limit, Solved solved) {
    Extreme extreme = solved.facts().extremes().get(freedom);
    if (extreme == null) {
      return Optional.empty();
    }
    long low = Math.round(sign > 0 ? extreme.low() : -extreme.high());
    long high = Math.round(sign > 0 ? extreme.high() : -extreme.low());
    boolean below = limit.degrees().value().low().filter(end -> low < degrees(end)).isPresent();
    boolean above = limit.degrees().value().high().filter(end -> high > degrees(end)).isPresent();
    return below || above
        ? Optional.of(
            freedom.jointWords() + " " + limit.movement() + " " + (below ? low : high) + " deg")
        : Optional.empty();
  }

  private static double degrees(Quantity end) {
    return end.inBase().doubleValue();
  }
}
