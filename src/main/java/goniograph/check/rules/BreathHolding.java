package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.language.Negation;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Version;
import java.util.stream.Stream;

/** Telling someone to hold the breath. */
public final class BreathHolding implements VersionRule {
  private static final String BREATHE = "s-breathe";

  private static final RulePage PAGE =
      RulePage.of(
          "breath-holding",
          "The text tells the patient to hold the breath. \"Do not hold your breath\" is silent.",
          "Blood pressure rises steeply in effort with held breath, and the breathing statement on"
              + " the same page says the opposite.",
          "Wiles 2018, PMC5882444: blood pressure in a wall squat",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.BAND,
              "Reach towards the door, arms almost straight.",
              "Reach towards the door and «hold your breath»."),
          Example.in(ExampleFiles.BAND, "Do not hold your breath.", "«Hold your breath».")
              .insteadOf("Reach towards the door, arms almost straight."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    WordFinder holding = words.senseFinder("breath-holding");
    Negation negation = Negation.of(words);
    return Said.all(version, checked).stream()
        .flatMap(
            said ->
                holding.find(said.text()).stream()
                    .filter(found -> !negation.reaches(said.text(), found.from()))
                    .map(found -> finding(entry, said, found)));
  }

  private Finding finding(Entry entry, Said said, WordFinder.Found found) {
    Finding finding =
        error(
            said.at(found.from(), found.to()),
            "The text tells the patient to hold the breath.",
            "Take it out. The care line `{" + BREATHE + "}` says what to do.");
    return entry.statements().stream()
        .filter(statement -> statement.value().equals(BREATHE))
        .findFirst()
        .map(
            statement ->
                finding.withBecause(
                    "`" + BREATHE + "` in `statements`, line " + statement.at().line()))
        .orElse(finding);
  }
}
