package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.language.Amounts;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Version;
import java.util.stream.Stream;

/** Numbers of one sentence that cannot all be true. */
public final class ClaimArithmetic implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "claim-arithmetic",
          "The numbers of a sentence contradict each other: a percentage and a multiple (400 % more"
              + " is 5 times as much), a percentage and percentage points, a multiple and its two"
              + " ends, one measure in two units, or times a week, weeks and their sum.",
          "One of them is wrong, and the wrong one is often many times too great.",
          "Arithmetic; pound and inch by the international agreement of 1959, standard gravity"
              + " 9.80665 m/s²",
          Acceptance.NOBODY,
          ExampleFiles.claim(
              "Bending raises it by 400 %, five times as much.",
              "Bending raises it by «400 %, four times as» much."),
          Example.in(
                  ExampleFiles.ADVICE, "The load is 60 lb (27 kg).", "The load is «60 lb (60 kg».")
              .insteadOf(ExampleFiles.TOLD));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    Amounts amounts = Amounts.of(words);
    Arithmetic arithmetic = new Arithmetic(words);
    return Said.all(version, checked).stream()
        .flatMap(
            said ->
                arithmetic.in(said.text(), amounts.find(said.text())).stream()
                    .map(found -> finding(said, found)));
  }

  private Finding finding(Said said, Arithmetic.Contradiction found) {
    return error(
        said.at(found.from(), found.to()),
        "These numbers cannot all be true: " + found.what() + ".",
        "Look at the source again, and print one of them, or none.");
  }
}
