package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Statement;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Spellings;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A statement of the starter set at a less urgent level than its meaning allows. The level stands
 * in the statement file; this is the second lock on it.
 */
public final class StatementLevel implements Rule {
  private static final Map<String, Urgency> LEAST = least();

  private static final RulePage PAGE =
      RulePage.of(
          "statement-level",
          "A statement that means an emergency (`s-chest`, `s-stroke`, `s-saddle`, `s-fall-hurt`) or"
              + " a call to the clinic has a less urgent level.",
          "Chest pain among the cautions would not be read as a reason to call at once.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.STATEMENTS,
              "s-chest:        { level: emergency",
              "s-chest:        { level: «caution»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    return checked.library().statements().stream().flatMap(one -> weakened(one).stream());
  }

  private Optional<Finding> weakened(Statement statement) {
    String id = statement.id().value();
    Urgency given = statement.urgency().value();
    return Optional.ofNullable(LEAST.get(id))
        .filter(least -> given.compareTo(least) > 0)
        .map(
            least ->
                error(
                    statement.urgency().at(),
                    "`" + id + "` has the level " + Spellings.word(given) + ".",
                    "Write `level: " + Spellings.word(least) + "`."));
  }

  private static Map<String, Urgency> least() {
    Map<String, Urgency> least = new HashMap<>();
    Stream.of("s-chest", "s-stroke", "s-saddle", "s-fall-hurt")
        .forEach(id -> least.put(id, Urgency.EMERGENCY));
    Stream.of(
            "s-spread",
            "s-numb-fingers",
            "s-both-hands",
            "s-calf",
            "s-dizzy-stop",
            "s-give-way",
            "s-fall",
            "s-worse")
        .forEach(id -> least.put(id, Urgency.CALL_US));
    return Map.copyOf(least);
  }
}
