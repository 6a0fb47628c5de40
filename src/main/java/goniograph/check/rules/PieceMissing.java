package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.source.Span;
import goniograph.translation.PieceState;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A language version that lacks pieces of its source, or has more. */
public final class PieceMissing implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "piece-missing",
          "A language version lacks a piece that its source has, or has one that the source does not"
              + " have. A piece is a title, a paragraph or one list item.",
          "A sheet is printed in one language whole, never mixed and never shorter.",
          RulePage.HOUSE,
          Acceptance.LANGUAGE_REVIEWER,
          Example.in(
                  ExampleFiles.CHAIR_RISE_ARABIC, "# النهوض عن الكرسي\n", "# «النهوض عن الكرسي»\n")
              .alongside(
                  ExampleFiles.CHAIR_RISE_ARABIC, "## landmark\nأنفك فوق أصابع قدميك\n", ""));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    List<PieceState> states = Pieces.states(entry, version, checked);
    String missing = names(states, PieceState.State.MISSING);
    Stream<Finding> leftOver =
        states.stream()
            .filter(state -> state.state() == PieceState.State.LEFT_OVER)
            .flatMap(state -> state.version().stream())
            .map(
                piece ->
                    warning(
                        piece.piece().at(),
                        "The source has nothing for `" + piece.name() + "`.",
                        "Take it out, or add it to the source first."));
    return missing.isEmpty()
        ? leftOver
        : Stream.concat(
            Stream.of(
                warning(
                    place(version),
                    "This version lacks " + missing + ".",
                    "Translate what is missing, then have the version signed.")),
            leftOver);
  }

  private static String names(List<PieceState> states, PieceState.State wanted) {
    return states.stream()
        .filter(state -> state.state() == wanted)
        .map(state -> "`" + state.name() + "`")
        .collect(Collectors.joining(", "));
  }

  private static Span place(Version version) {
    return version
        .body()
        .title()
        .map(title -> title.at())
        .orElseGet(() -> Places.start(version.body().at()));
  }
}
