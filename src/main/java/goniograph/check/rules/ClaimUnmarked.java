package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Version;
import java.util.stream.Stream;

/** A claim without the mark of its evidence. */
public final class ClaimUnmarked implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "claim-unmarked",
          "A sentence holds a percentage, a multiple, thousands, a superlative, a word of proof or a"
              + " word without exceptions, and does not end with the mark `[claim-id]` of its"
              + " evidence. In the steps, words without exceptions are instructions and silent.",
          "Nobody could see what it rests on, or whether it still holds. False science frightens.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.ADVICE,
              ExampleFiles.TOLD,
              "Eight weeks of practice make you «30 %» stronger."),
          Example.in(
                  ExampleFiles.ADVICE,
                  "The next morning is a good test.",
                  "The next morning is the «best» test.")
              .insteadOf(ExampleFiles.TOLD));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    ClaimCues cues = new ClaimCues(checked.words(version.language()));
    return Said.all(version, checked).stream()
        .filter(said -> !said.marked())
        .flatMap(said -> cues.of(said).stream().map(cue -> finding(said, cue)));
  }

  private Finding finding(Said said, ClaimCues.Cue cue) {
    String words = said.text().substring(cue.from(), cue.to());
    return error(
        said.at(cue.from(), cue.to()),
        "`" + words + "` is " + cue.kind() + ", and the sentence names no evidence.",
        "End the sentence with `[claim-id]` and give the evidence in the front matter, or say it"
            + " plainly: \"helps\", \"often\", \"more than before\".");
  }
}
