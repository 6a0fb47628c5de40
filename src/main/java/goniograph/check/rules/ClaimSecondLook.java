package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.language.Amounts;
import goniograph.language.Amounts.Amount;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Version;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A number of a claim that readers take too big, even where it is right. */
public final class ClaimSecondLook implements VersionRule {
  private static final double BIG_MULTIPLE = 10;
  private static final double BIG_PERCENT = 1000;

  private static final RulePage PAGE =
      RulePage.of(
          "claim-second-look",
          "A marked claim holds a multiple of 10 or more, 1,000 % or more, a number of thousands,"
              + " \"times more\", which some read as one time more, or a share by which a risk falls"
              + " without the risk itself.",
          "1,600 % and 1,600 times differ a hundredfold, and a startling number frightens. People"
              + " keep the number and forget what it was about.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          ExampleFiles.claim(
              "The load is 2 times as great.", "The load is «1,600 times as» great."),
          ExampleFiles.claim(
              "The risk falls by 50 %, from 2 in 100.", "The risk falls by «50 %»."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    Amounts amounts = Amounts.of(words);
    Arithmetic arithmetic = new Arithmetic(words);
    Risks risks = new Risks(words);
    return Said.all(version, checked).stream()
        .filter(Said::marked)
        .flatMap(
            said -> {
              List<Amount> all = amounts.find(said.text());
              return arithmetic.in(said.text(), all).isPresent()
                  ? Stream.empty()
                  : all.stream().flatMap(one -> look(said, one, risks).stream()).limit(1);
            });
  }

  /** Words about risks, and about how great they are in themselves. */
  private record Risks(WordFinder risk, WordFinder itself) {
    Risks(Words words) {
      this(words.finder("claim.risk"), words.finder("claim.absolute-risk"));
    }

    boolean alone(String sentence) {
      return !risk.find(sentence).isEmpty() && itself.find(sentence).isEmpty();
    }
  }

  private Optional<Finding> look(Said said, Amount one, Risks risks) {
    double value = one.value().doubleValue();
    boolean multiple = one.unit().startsWith("factor");
    boolean percent = one.unit().equals("percent");
    if (multiple && value >= BIG_MULTIPLE || percent && value >= BIG_PERCENT) {
      return Optional.of(big(said, one));
    }
    if (one.unit().equals("factor-more")) {
      return Optional.of(timesMore(said, one));
    }
    if (percent && one.start().isEmpty() && risks.alone(said.text())) {
      return Optional.of(relative(said, one));
    }
    return !multiple && !percent && value >= BIG_PERCENT
        ? Optional.of(big(said, one))
        : Optional.empty();
  }

  private Finding big(Said said, Amount one) {
    return warning(
        said.at(one.from(), one.to()),
        "`" + words(said, one) + "` is startling; look at the source once more.",
        "Ask whether it is a percentage or a multiple. For patients say \"several times\" and what"
            + " it holds for, or leave it out.");
  }

  private Finding timesMore(Said said, Amount one) {
    return warning(
        said.at(one.from(), one.to()),
        "`" + words(said, one) + "` can be read as one time more than meant.",
        "Write \"" + one.value().toPlainString() + " times as much\", or \"much more\".");
  }

  private Finding relative(Said said, Amount one) {
    return warning(
        said.at(one.from(), one.to()),
        "`" + words(said, one) + "` says how much a risk changes, and not how great it is.",
        "Say it in people: \"from 2 in 100 to 1 in 100\".");
  }

  private static String words(Said said, Amount one) {
    return said.text().substring(one.from(), one.to());
  }
}
