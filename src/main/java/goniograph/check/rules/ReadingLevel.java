package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.language.Language;
import goniograph.language.Readability;
import goniograph.language.ReadingCounts;
import goniograph.language.TextMeasure;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.matter.Located;
import goniograph.matter.Piece;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How hard a text is to read, where a verified formula can say so. */
public final class ReadingLevel implements Rule {
  /** The highest school grade of a text for patients: American Medical Association, sixth grade. */
  private static final double HIGHEST_GRADE = 6;

  /** Fewer words than this say nothing about a level. */
  private static final int FEWEST_WORDS = 40;

  private static final RulePage PAGE =
      RulePage.of(
          "reading-level",
          "The source text is above the sixth school grade by Kincaid's formula: a warning with the"
              + " counts. For each other language of the clinic a note says that no score is given,"
              + " and why: there is no verified formula, or its syllables are not counted.",
          "Many patients read as a child of ten does. A formula knows nothing of whether a text is"
              + " clear: have a reader tell you what he would do.",
          "American Medical Association, at most sixth grade, in PMC6334864; Kincaid 1975",
          Acceptance.AUTHOR,
          Example.in("shared/clinic.yaml", "languages: [en, ar]", "languages: [en, «ar»]"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    return Stream.concat(
        checked.entries().flatMap(this::hard),
        checked.library().clinic().stream()
            .flatMap(clinic -> clinic.languages().stream())
            .filter(language -> !language.value().equals(Library.SOURCE_LANGUAGE))
            .map(language -> unscored(language, checked.language(language.value()))));
  }

  private Stream<Finding> hard(Entry entry) {
    List<String> pieces =
        entry.text().pieces().stream()
            .filter(piece -> piece.careLine().isEmpty())
            .map(Piece::text)
            .toList();
    TextMeasure measure = TextMeasure.of(Language.ENGLISH, pieces);
    double grade = measure.score(Readability.FLESCH_KINCAID).orElse(0);
    return measure.counts().words() < FEWEST_WORDS || grade <= HIGHEST_GRADE
        ? Stream.empty()
        : Stream.of(hard(entry, measure, grade));
  }

  private Finding hard(Entry entry, TextMeasure measure, double grade) {
    double ease = measure.score(Readability.FLESCH_READING_EASE).orElse(0);
    return warning(
            Places.start(entry.text().at()),
            String.format(
                Locale.ROOT,
                "The text reads like grade %.1f; at most %.0f is read easily (reading ease %.0f).",
                grade,
                HIGHEST_GRADE,
                ease),
            "Shorter sentences and shorter words. Then ask a reader what he would do.")
        .withBecause(counted(measure.counts()))
        .withEntry(entry.id())
        .withLanguage(Library.SOURCE_LANGUAGE);
  }

  private static String counted(ReadingCounts counts) {
    return counts.words()
        + " words, "
        + counts.sentences()
        + " sentences, "
        + counts.syllables()
        + " syllables";
  }

  private Finding unscored(Located<String> tag, Language language) {
    List<Readability> formulas = Readability.of(language);
    String reason =
        formulas.isEmpty()
            ? "no formula with verified coefficients is known for it"
            : "of the formulas for it ("
                + formulas.stream()
                    .map(one -> one.author() + ", checked against " + one.proof().words())
                    .collect(Collectors.joining("; "))
                + ") none is used on a translation";
    return note(
            tag.at(),
            "Texts in `" + tag.value() + "` get no reading score: " + reason + ".",
            "Only its word lists are checked. Have a reader tell you what he would do.")
        .withLanguage(tag.value());
  }
}
