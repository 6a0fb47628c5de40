package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.matter.Inline;
import goniograph.matter.Piece;
import goniograph.translation.PieceState;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A translated piece that lost or invented the mark of a claim. */
public final class ClaimMarksDiffer implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "claim-marks-differ",
          "A piece of a language version lost a `[claim-id]` of its source, or has one that the"
              + " source does not have.",
          "The claim would stand without its evidence in one language alone.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.ADVICE_ARABIC,
              "5. دع صباح اليوم التالي يقرر. هدأ الوجع؟ إذن تابع. [next-morning-test]",
              "5. «دع صباح اليوم التالي يقرر. هدأ الوجع؟ إذن تابع.»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    List<String> known = entry.common().claims();
    return Pieces.states(entry, version, checked).stream().flatMap(s -> finding(s, known));
  }

  /** A mark that is misspelt on one of the two sides has its own finding. */
  private Stream<Finding> finding(PieceState state, List<String> known) {
    if (state.source().isEmpty() || state.version().isEmpty()) {
      return Stream.empty();
    }
    Piece here = state.version().get().piece();
    List<String> wanted = claims(state.source().get().piece());
    if (!known.containsAll(wanted) || !known.containsAll(claims(here))) {
      return Stream.empty();
    }
    List<String> lost = without(wanted, claims(here));
    List<String> invented = without(claims(here), wanted);
    return lost.isEmpty() && invented.isEmpty()
        ? Stream.empty()
        : Stream.of(
            error(
                    here.at(),
                    "The marks of claims of `"
                        + state.name()
                        + "` differ: "
                        + words(lost, invented)
                        + ".",
                    "Write exactly the marks of the source, each at the end of its sentence.")
                .withBecause("source line " + state.source().get().piece().at().line()));
  }

  private static List<String> claims(Piece piece) {
    return piece.claims().stream().map(Inline.Claim::id).toList();
  }

  private static List<String> without(List<String> all, List<String> some) {
    List<String> left = new ArrayList<>(all);
    some.forEach(left::remove);
    return left;
  }

  private static String words(List<String> lost, List<String> invented) {
    List<String> words = new ArrayList<>();
    if (!lost.isEmpty()) {
      words.add("lost " + Words.listed(lost));
    }
    if (!invented.isEmpty()) {
      words.add("invented " + Words.listed(invented));
    }
    return String.join("; ", words);
  }
}
