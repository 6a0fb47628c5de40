package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.language.Amounts;
import goniograph.language.Negation;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Advice;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.LocatedDose;
import goniograph.library.Version;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Words that ask for more pain than the entry allows. */
public final class PainWording implements VersionRule {
  private static final int TOP_OF_SCALE = 10;

  private static final RulePage PAGE =
      RulePage.of(
          "pain-wording",
          "The text tells the patient to go on in spite of pain, allows a pain score above"
              + " `pain.during_max`, or uses a scale that does not end at 10. The allowed score typed"
              + " by hand is a warning.",
          "The plan for pain is the same on every sheet. One sentence that asks for more undoes it.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "A little out of breath is fine.",
              "«Push through» the last ones."),
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "A little out of breath is fine.",
              "Pain up to «7 out of 10» is fine."),
          Example.in(ExampleFiles.CHAIR_RISE, "Do not push through pain.", "Lean «until it hurts».")
              .insteadOf("A little out of breath is fine."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    Scores scores = new Scores(words);
    OptionalInt most = most(entry);
    return Said.all(version, checked).stream()
        .flatMap(said -> Stream.concat(pushed(said, words), scores(said, scores, most)));
  }

  private static OptionalInt most(Entry entry) {
    LocatedDose dose =
        entry instanceof Exercise exercise
            ? exercise.dose()
            : entry instanceof Advice advice ? advice.dose() : LocatedDose.NONE;
    return dose.dose().count(DoseField.PAIN_DURING_MAX);
  }

  private Stream<Finding> pushed(Said said, Words words) {
    WordFinder push = words.senseFinder("pain.push");
    Negation negation = Negation.of(words);
    return push.find(said.text()).stream()
        .filter(found -> !negation.reaches(said.text(), found.from()))
        .map(
            found ->
                error(
                    said.at(found.from(), found.to()),
                    "The text tells the patient to go on in spite of pain.",
                    "Take it out, or say how far: \"Up to `{pain.during_max}` out of 10 is"
                        + " fine.\""));
  }

  /** What a sentence says about scores of pain. */
  private record Scores(
      Amounts amounts, WordFinder pain, WordFinder fine, WordFinder stop, Negation negation) {
    Scores(Words words) {
      this(
          Amounts.of(words),
          words.finder("pain"),
          words.finder("pain.fine"),
          words.finder("pain.stop"),
          Negation.of(words));
    }

    /** The scores that a sentence allows; none where it tells to stop or to do less. */
    List<Amounts.Amount> allowed(String sentence) {
      boolean allows =
          !pain.find(sentence).isEmpty()
              && fine.find(sentence).stream()
                  .anyMatch(one -> !negation.reaches(sentence, one.from()))
              && stop.find(sentence).isEmpty();
      return allows
          ? amounts.find(sentence).stream()
              .filter(one -> one.unit().equals("of-ten") || one.unit().isEmpty())
              .toList()
          : List.of();
    }
  }

  private Stream<Finding> scores(Said said, Scores scores, OptionalInt most) {
    return scores.allowed(said.text()).stream().flatMap(one -> score(said, one, most).stream());
  }

  private Optional<Finding> score(Said said, Amounts.Amount one, OptionalInt most) {
    double score = one.value().doubleValue();
    var at = said.at(one.from(), one.to());
    if (score > TOP_OF_SCALE) {
      return Optional.of(
          error(
              at,
              "Pain is scored from 0 to 10; there is no " + one.value() + ".",
              "On a line of 100 mm, 50 is 5 of 10: write `{pain.during_max}` out of 10."));
    }
    if (most.isEmpty() || score < most.getAsInt()) {
      return Optional.empty();
    }
    String mend = "Write `{pain.during_max}` in the place of the number.";
    return Optional.of(
        (score > most.getAsInt()
                ? error(at, "The text allows more pain than the entry does.", mend)
                : warning(at, "The pain limit is typed by hand.", mend))
            .withBecause("pain.during_max " + most.getAsInt()));
  }
}
