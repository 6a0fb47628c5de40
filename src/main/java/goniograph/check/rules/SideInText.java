package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.dose.Sides;
import goniograph.finding.Finding;
import goniograph.language.SideFinder;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Version;
import goniograph.pose.SceneFacts;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Left and right in the text, held against the side mode and the pose. */
public final class SideInText implements VersionRule {
  private static final String PICTURE = "picture";

  private static final RulePage PAGE =
      RulePage.of(
          "side-in-text",
          "A side is typed where it is asked at print; a text names one side alone where both work;"
              + " it names the other side than the entry's; or the words for the drawing name"
              + " another side than the pose shows. \"All right\" and \"right angle\" are no sides.",
          "The patient trains the wrong side, or half of what was meant.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "Press your feet into the floor.",
              "Press your «right» foot into the floor."),
          Example.in(
                  ExampleFiles.HEEL_TO_TOE,
                  "## picture\nThe right foot stands in front.\n## feel\n",
                  "## picture\nThe «left» foot stands in front.\n## feel\n")
              .insteadOf("## feel\n")
              .where(
                  ExampleFiles.HEEL_TO_TOE_ARABIC,
                  "## feel\n",
                  "## picture\nالقدم اليمنى في الأمام.\n## feel\n"));

  /** A side that is named, and where. */
  record Named(Said said, SideFinder.Found found) {
    boolean left() {
      return found.left();
    }
  }

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
    SideFinder finder = SideFinder.of(words);
    List<Named> all = new ArrayList<>();
    for (Said said : Said.all(version, checked)) {
      finder.find(said.text()).forEach(found -> all.add(new Named(said, found)));
    }
    return asked(exercise)
        ? all.stream().flatMap(one -> typed(one, all).stream())
        : judged(exercise, all, words, checked);
  }

  /** The title and the words against the mode first; where they agree, all against the figure. */
  private Stream<Finding> judged(Exercise exercise, List<Named> all, Words words, Checked checked) {
    Sides sides = exercise.sides().value();
    boolean fixed = sides.mode() == Sides.Mode.LEFT || sides.mode() == Sides.Mode.RIGHT;
    List<Named> title = all.stream().filter(one -> one.said().in(Said.TITLE)).toList();
    List<Named> told = all.stream().filter(one -> !one.said().in(PICTURE)).toList();
    List<Named> shown = all.stream().filter(one -> fixed || one.said().in(PICTURE)).toList();
    Optional<Finding> wrong = alone(sides, title).or(() -> alone(sides, told));
    return wrong.isPresent() ? wrong.stream() : shown(exercise, shown, words, checked);
  }

  private static boolean asked(Exercise exercise) {
    Sides sides = exercise.sides().value();
    return sides.mode() == Sides.Mode.AFFECTED || sides.askAtPrint();
  }

  /** "The side that hurts, left or right" names no side. */
  private Optional<Finding> typed(Named one, List<Named> all) {
    boolean both =
        all.stream().anyMatch(other -> other.said() == one.said() && other.left() != one.left());
    return both
        ? Optional.empty()
        : Optional.of(
            error(
                    at(one),
                    "A side is typed, and the side is asked at print.",
                    "Write `{side"
                        + part(one)
                        + "}`, or `{other"
                        + part(one)
                        + "}` for the other"
                        + " side.")
                .withBecause("sides in the front matter"));
  }

  private static String part(Named one) {
    return one.found().part().equals("arm") || one.found().part().equals("leg")
        ? "." + one.found().part()
        : "";
  }

  private Optional<Finding> alone(Sides sides, List<Named> told) {
    boolean left = told.stream().anyMatch(Named::left);
    boolean right = told.stream().anyMatch(one -> !one.left());
    if (left == right) {
      return Optional.empty();
    }
    return switch (sides.mode()) {
      case LEFT -> right ? Optional.of(other(told.get(0), sides)) : Optional.empty();
      case RIGHT -> left ? Optional.of(other(told.get(0), sides)) : Optional.empty();
      default -> Optional.of(oneOnly(told.get(0), sides));
    };
  }

  private Finding other(Named one, Sides sides) {
    return error(
            at(one),
            "The text names the " + word(one.left()) + " side alone, the entry works on the other.",
            "Write the side of the entry, or mend `sides`.")
        .withBecause("sides.mode " + sides.mode().word());
  }

  private Finding oneOnly(Named one, Sides sides) {
    return error(
            at(one),
            "The text names the " + word(one.left()) + " side alone, the entry works on both.",
            "Say it without a side, or for both sides.")
        .withBecause("sides.mode " + sides.mode().word());
  }

  private Stream<Finding> shown(
      Exercise exercise, List<Named> shown, Words words, Checked checked) {
    Optional<SceneFacts> facts =
        exercise.rungs().stream().flatMap(rung -> checked.poses().facts(rung).stream()).findFirst();
    return facts.stream()
        .flatMap(
            scene -> {
              ShownSides sides =
                  new ShownSides(scene, words, exercise.sides().value().mode() == Sides.Mode.LEFT);
              return shown.stream().flatMap(one -> against(one, shown, sides, scene).stream());
            });
  }

  /** A sentence that speaks of both sides may say of each what it likes. */
  private Optional<Finding> against(
      Named one, List<Named> shown, ShownSides sides, SceneFacts scene) {
    boolean both =
        shown.stream().anyMatch(other -> other.said() == one.said() && other.left() != one.left());
    return both
        ? Optional.empty()
        : sides
            .contradiction(one.said().text(), one.found())
            .map(
                shows ->
                    error(
                            at(one),
                            "The words name the "
                                + word(one.left())
                                + " side, in the figure "
                                + shows
                                + ".",
                            "Write the side that the figure shows, or mend the pose.")
                        .withBecause("figures/" + scene.pose() + ".yaml"));
  }

  private static Span at(Named one) {
    return one.said().at(one.found().from(), one.found().to());
  }

  private static String word(boolean left) {
    return left ? "left" : "right";
  }
}
