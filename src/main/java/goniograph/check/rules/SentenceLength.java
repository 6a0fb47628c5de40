package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.language.Language;
import goniograph.language.TextMeasure;
import goniograph.library.Advice;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.library.Version;
import goniograph.matter.Piece;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Sentences that are too long to be read in a kitchen. */
public final class SentenceLength implements VersionRule {
  private static final int MOST = 18;
  private static final int MOST_IN_ADVICE = 20;
  private static final double MEAN = 12;

  private static final RulePage PAGE =
      RulePage.of(
          "sentence-length",
          "In the source language a sentence has more than 18 words (20 in an advice topic), or the"
              + " sentences of a text have more than 12 on average.",
          "Many patients read as a child of ten does, and in poor light.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "3. Lean forward until your nose is over your toes.",
              "3. «Lean forward slowly from your hips with a long back until your nose comes to be"
                  + " over the front of your toes.»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    if (!version.language().equals(Library.SOURCE_LANGUAGE)) {
      return Stream.empty();
    }
    List<Piece> pieces = version.body().pieces();
    TextMeasure measure =
        TextMeasure.of(Language.ENGLISH, pieces.stream().map(Piece::text).toList());
    int most = entry instanceof Advice ? MOST_IN_ADVICE : MOST;
    Stream<Finding> tooLong =
        measure.sentences().stream()
            .filter(sentence -> sentence.words() > most)
            .map(sentence -> tooLong(sentence, most, version, pieces.get(sentence.piece())));
    return Stream.concat(tooLong, mean(measure, version));
  }

  private Finding tooLong(TextMeasure.Measured sentence, int most, Version version, Piece piece) {
    return warning(
        Places.within(version.file(), piece, sentence.from(), sentence.to()),
        "This sentence has " + sentence.words() + " words, at most " + most + " are read easily.",
        "Make two sentences of it, or leave something out.");
  }

  private Stream<Finding> mean(TextMeasure measure, Version version) {
    return measure.meanSentence() <= MEAN
        ? Stream.empty()
        : Stream.of(
            warning(
                Places.start(version.body().at()),
                String.format(
                    Locale.ROOT,
                    "The sentences have %.1f words on average, at most 12 are read easily.",
                    measure.meanSentence()),
                "Shorten the longest sentences."));
  }
}
