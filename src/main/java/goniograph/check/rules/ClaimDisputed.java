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
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A common claim that published sources disagree with. */
public final class ClaimDisputed implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "claim-disputed",
          "A sentence makes a common claim about neck load, posture or practice that published"
              + " sources disagree with; they are named. A mark of evidence does not silence it.",
          "What everybody repeats is taken for true, and frightens people out of moving.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(
                  ExampleFiles.ADVICE,
                  "Many sit bent and feel nothing.",
                  "«Bad posture causes neck pain.»")
              .insteadOf(ExampleFiles.TOLD),
          Example.in(
                  ExampleFiles.ADVICE,
                  "A bent neck works harder.",
                  "«A bent neck carries 60 pounds.»")
              .insteadOf(ExampleFiles.TOLD));

  /**
   * A claim, what disagrees with it, and what to say; its words stand in the lists of languages.
   */
  enum Dispute {
    NECK_LOAD(
        "Hansraj 2014 (Surg Technol Int 25:277) worked it out from one model whose neutral load is"
            + " below the head's own weight. Barrett 2020 (Ergonomics 63:101) measured about twice"
            + " as much at 45 degrees, Vasavada 2015 (Ergonomics 58:990) 3 to 5 times.",
        "Say \"several times\" and what it holds for, never pounds or kilograms."),
    INCH_RULE(
        "\"10 pounds for each inch\" has no source that could be found; it is ascribed to Kapandji"
            + " without a page.",
        "Leave the number out."),
    POSTURE_PAIN(
        "Damasceno 2018 (Eur Spine J) found no association between bent necks and neck pain."
            + " Mahmoud 2019 (Curr Rev Musculoskelet Med 12:562) found one in adults and none in"
            + " adolescents.",
        "Say \"changing position often helps many people\"."),
    PLUMB_LINE(
        "A scoping review by Barra-López (J Rehabil Med 41899) finds the plumb line standard not"
            + " supported by evidence, with false alarms in older people above all.",
        "Say \"sit or stand in a way that you can keep with ease\"."),
    ADHERENCE(
        "Henry 1999 (Phys Ther 79:270) found that people with 2 exercises performed them better than"
            + " those with 8, and no difference in how often they said they did them.",
        "Say \"few exercises are done better\"."),
    STRETCH_FOUR(
        "At least 4 repetitions is the position of 1998; ACSM 2011 (MSSE 43:1334) asks for 60"
            + " seconds in all for each stretch.",
        "Leave the number to the dose."),
    NECK_ANGLE(
        "There is no agreed limit: 44, 48, 50 and 53 degrees are in use (from memory). Lau 2009 (Man"
            + " Ther 14:363) found 44 with neck pain and 51 without, on average.",
        "Leave the number out.");

    private final String sources;
    private final String mend;

    Dispute(String sources, String mend) {
      this.sources = sources;
      this.mend = mend;
    }

    String sources() {
      return sources;
    }

    String mend() {
      return mend;
    }

    private String list() {
      return "disputed." + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".";
    }

    /** Whether a sentence makes the claim: it has a word of every part. */
    boolean in(String sentence, Words words) {
      List<WordFinder> parts =
          words.below(list()).values().stream().map(part -> WordFinder.of(words, part)).toList();
      Negation negation = Negation.of(words);
      return !parts.isEmpty()
          && parts.stream()
              .allMatch(
                  part ->
                      part.find(sentence).stream()
                          .anyMatch(one -> !negation.reaches(sentence, one.from())));
    }
  }

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    return Said.all(version, checked).stream()
        .filter(said -> !said.in("do", "captions", "picture", "landmark"))
        .flatMap(
            said ->
                Stream.of(Dispute.values())
                    .filter(dispute -> dispute.in(said.text(), words))
                    .limit(1)
                    .map(dispute -> finding(said, dispute)));
  }

  private Finding finding(Said said, Dispute dispute) {
    return warning(said.at(), "Published sources disagree. " + dispute.sources(), dispute.mend());
  }
}
