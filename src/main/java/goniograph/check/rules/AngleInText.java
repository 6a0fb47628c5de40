package goniograph.check.rules;

import goniograph.body.Freedom;
import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Version;
import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An angle in the text, held against the solved pose. */
public final class AngleInText implements VersionRule {
  /** An angle said in words is read to about this many degrees; common practice, no source. */
  private static final double TOLERANCE = 5;

  private static final RulePage PAGE =
      RulePage.of(
          "angle-in-text",
          "The text names an angle of a joint that no drawing of the solved pose has: an error, with the"
              + " value that is true. An angle in degrees that is true is a warning; a right angle"
              + " that is true is silent.",
          "The drawing shows one position and the words ask for another. Few patients can see"
              + " degrees: a landmark says the same.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(
              ExampleFiles.BAND,
              "Pull both elbows back past your ribs.",
              "Pull both elbows back and bend them to «60 degrees»."),
          Example.in(
                  ExampleFiles.CHAIR_RISE,
                  "Feet flat, under your knees.",
                  "Feet flat, your hips bent to «60 degrees».")
              .insteadOf("Feet flat, under your knees."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    if (!(entry instanceof Exercise exercise)) {
      return Stream.empty();
    }
    Words words = checked.words(version.language());
    SaidAngles angles = new SaidAngles(words);
    List<SceneFacts> facts =
        exercise.rungs().stream()
            .flatMap(rung -> checked.poses().facts(rung).stream())
            .distinct()
            .toList();
    return Said.all(version, checked).stream()
        .flatMap(
            said ->
                angles.find(said.text()).stream()
                    .flatMap(angle -> finding(said, angle, facts).stream()));
  }

  private Optional<Finding> finding(Said said, SaidAngles.Angle angle, List<SceneFacts> facts) {
    boolean exact = angle.bound() == SaidAngles.Bound.EXACT;
    List<Double> solved =
        facts.stream()
            .flatMap(one -> (exact ? one.keys() : one.all()).stream())
            .flatMap(moment -> values(moment, angle).stream())
            .toList();
    boolean known = !solved.isEmpty();
    if (known && !agrees(angle, solved)) {
      return Optional.of(wrong(said, angle, facts, solved));
    }
    return angle.inDegrees() ? Optional.of(typed(said, angle)) : Optional.empty();
  }

  private Finding typed(Said said, SaidAngles.Angle angle) {
    return warning(
        said.at(angle.from(), angle.to()),
        "An angle in degrees is typed into the text.",
        "Say where the movement ends by something the patient can see: \"until your nose is over"
            + " your toes\".");
  }

  private Finding wrong(
      Said said, SaidAngles.Angle angle, List<SceneFacts> facts, List<Double> solved) {
    double nearest =
        solved.stream()
            .min(Comparator.comparingDouble(one -> Math.abs(one - angle.degrees())))
            .orElseThrow();
    String typed = said.text().substring(angle.from(), angle.to());
    return error(
            said.at(angle.from(), angle.to()),
            "`" + typed + "` is not what the figure shows: " + truth(angle, facts, nearest) + ".",
            "Name a landmark, or change the pose.")
        .withBecause(because(angle, facts));
  }

  /** What is true, and where chair and floor leave no choice, that too. */
  private static String truth(SaidAngles.Angle angle, List<SceneFacts> facts, double nearest) {
    return facts.stream()
        .filter(one -> angle.joint().setBySeat())
        .flatMap(one -> seated(one, angle, nearest).stream())
        .findFirst()
        .orElseGet(() -> "the nearest it comes is " + whole(nearest) + " degrees");
  }

  private static Optional<String> seated(SceneFacts facts, SaidAngles.Angle angle, double nearest) {
    MomentFacts start = facts.keys().get(0);
    boolean onFeet = start.feet().keySet().stream().anyMatch(start::bears);
    return facts
        .seatHeightCm()
        .filter(height -> onFeet)
        .map(
            height ->
                "on a seat of "
                    + whole(height)
                    + " cm with the feet on the floor it cannot be; true is "
                    + values(start, angle).stream()
                        .min(Comparator.comparingDouble(one -> Math.abs(one - nearest)))
                        .map(AngleInText::whole)
                        .orElse("")
                    + " degrees");
  }

  private static String because(SaidAngles.Angle angle, List<SceneFacts> facts) {
    return facts.stream()
        .map(
            one ->
                "figures/"
                    + one.pose()
                    + ".yaml: "
                    + angle.joint().word()
                    + " "
                    + one.keys().stream()
                        .map(key -> key.name() + " " + inFrame(key, angle))
                        .collect(Collectors.joining(", ")))
        .collect(Collectors.joining("; "));
  }

  private static String inFrame(MomentFacts key, SaidAngles.Angle angle) {
    return values(key, angle).stream()
        .map(AngleInText::whole)
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private static boolean agrees(SaidAngles.Angle angle, List<Double> solved) {
    return switch (angle.bound()) {
      case MOST -> solved.stream().allMatch(one -> one <= angle.degrees() + TOLERANCE);
      case LEAST -> solved.stream().anyMatch(one -> one >= angle.degrees() - TOLERANCE);
      case EXACT -> solved.stream().anyMatch(one -> Math.abs(one - angle.degrees()) <= TOLERANCE);
    };
  }

  /** The solved angles at one moment, each side once, without their direction. */
  private static List<Double> values(MomentFacts moment, SaidAngles.Angle angle) {
    if (angle.joint() == SaidAngles.SaidJoint.LEAN) {
      return List.of(Math.abs(moment.leanDegrees()));
    }
    return moment.angles().values().entrySet().stream()
        .filter(one -> measures(one.getKey(), angle))
        .map(one -> Math.abs(one.getValue()))
        .toList();
  }

  private static boolean measures(Freedom freedom, SaidAngles.Angle angle) {
    return angle.joint().joint().equals(Optional.of(freedom.joint()))
        && angle.joint().movements(angle.sideways()).contains(freedom.movement());
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
