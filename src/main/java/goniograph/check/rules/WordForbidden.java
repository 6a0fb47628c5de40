package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.matter.Body;
import goniograph.matter.Piece;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A word that patients do not know, or take in more than one way. */
public final class WordForbidden implements VersionRule {
  private static final String DO = "do";

  private static final RulePage PAGE =
      RulePage.of(
          "word-forbidden",
          "A word of the trade, a word that the clinic's list forbids, or one that readers take in"
              + " more than one way. An error in the steps, a warning elsewhere.",
          "A patient at home does the wrong thing, or nothing.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(ExampleFiles.CHAIR_RISE, "Stand tall.", "«Engage» your seat muscles."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    Map<String, String> forbidden = new TreeMap<>(checked.forbidden(version.language()));
    List<String> all = new ArrayList<>(forbidden.keySet());
    all.addAll(words.neverPrinted());
    all.addAll(words.ambiguous());
    WordFinder finder = WordFinder.of(words, all);
    Stream<Finding> title =
        version.body().title().stream().flatMap(piece -> in(piece, "", version, finder, forbidden));
    return Stream.concat(
        title,
        version.body().sections().stream()
            .flatMap(section -> in(section, version, finder, forbidden)));
  }

  private Stream<Finding> in(
      Body.Section section, Version version, WordFinder finder, Map<String, String> say) {
    return section.pieces().stream()
        .flatMap(piece -> in(piece, section.key().value(), version, finder, say));
  }

  private Stream<Finding> in(
      Piece piece, String section, Version version, WordFinder finder, Map<String, String> say) {
    return finder.find(piece.text()).stream()
        .map(
            found ->
                finding(
                    Places.within(version.file(), piece, found.from(), found.to()),
                    found.phrase(),
                    section.equals(DO),
                    say.getOrDefault(found.phrase(), "")));
  }

  private Finding finding(Span at, String word, boolean step, String say) {
    String what = "`" + word + "` is not printed for patients.";
    String mend = say.isEmpty() ? "Say it in everyday words." : "Write \"" + say + "\".";
    return step ? error(at, what, mend) : warning(at, what, mend);
  }
}
