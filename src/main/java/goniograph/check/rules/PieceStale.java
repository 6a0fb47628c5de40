package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.translation.PieceState;
import goniograph.translation.TextPiece;
import java.util.stream.Stream;

/** A translated piece whose source has changed since. */
public final class PieceStale implements VersionRule {
  /** Says that the Arabic piece was made from an English one that is no longer there. */
  private static final String RECORD =
      "schema: register/1\npieces:\n  ar:\n    - source: "
          + "0".repeat(64)
          + "\n      target: 5d42cd373ba6dedd06c3d413dcbd515028e448d61c7985973488595138744b9e\n"
          + "      by: translator-1\n      on: 2026-05-01\n";

  private static final RulePage PAGE =
      RulePage.of(
          "piece-stale",
          "The source of a translated piece has changed since the translation was recorded. Numbers"
              + " are slots, so a change of dose makes no piece stale.",
          "It may tell the patient something else than what the clinic now stands by.",
          RulePage.HOUSE,
          Acceptance.LANGUAGE_REVIEWER,
          Example.in(
                  ExampleFiles.CHAIR_RISE_ARABIC,
                  "تعمل عضلات فخذيك ومقعدتك. قليل من اللهاث لا بأس به.",
                  "«تعمل عضلات الفخذين والمقعدة. قليل من اللهاث لا بأس به.»")
              .insteadOf("تعمل عضلات الفخذين والمقعدة. قليل من اللهاث لا بأس به.")
              .where("content/exercises/hp-chair-rise/register.yaml", "", RECORD));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    return Pieces.states(entry, version, checked).stream()
        .filter(state -> state.state() == PieceState.State.STALE)
        .flatMap(state -> stale(state));
  }

  private Stream<Finding> stale(PieceState state) {
    return state.version().stream()
        .filter(TextPiece::hasWords)
        .map(
            piece ->
                warning(
                        piece.piece().at(),
                        "`" + state.name() + "` was made from a source text that has changed.",
                        "Compare it with the source, then have its translator sign the version.")
                    .withBecause(
                        state
                            .source()
                            .map(source -> "source line " + source.piece().at().line())
                            .orElse("")));
  }
}
