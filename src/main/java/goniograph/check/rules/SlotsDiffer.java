package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.SlotTable;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.library.Version;
import goniograph.matter.Inline;
import goniograph.translation.PieceState;
import goniograph.translation.SlotDifference;
import goniograph.translation.TextPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A translated piece that lost, doubled or invented a slot. */
public final class SlotsDiffer implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "slots-differ",
          "A piece of a language version lost a slot of its source, has it twice, or has one that the"
              + " source does not have. The grammatical form behind a colon does not count.",
          "A number of the dose or a safety line would be missing in one language alone.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE_ARABIC,
              "5. اجلس ببطء. المدة: {tempo.lower}.",
              "5. «اجلس ببطء.»"),
          Example.in(
              ExampleFiles.CHAIR_RISE_ARABIC,
              "5. اجلس ببطء. المدة: {tempo.lower}.",
              "5. «اجلس ببطء. المدة: {tempo.lift}.»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    return Pieces.states(entry, version, checked).stream()
        .flatMap(state -> finding(state, checked.library()));
  }

  private Stream<Finding> finding(PieceState state, Library library) {
    if (state.source().isEmpty()
        || state.version().isEmpty()
        || !known(state.source().get(), library)) {
      return Stream.empty();
    }
    SlotDifference difference =
        SlotDifference.between(state.source().get().piece(), state.version().get().piece());
    return difference.isEmpty()
        ? Stream.empty()
        : Stream.of(
            error(
                    state.version().get().piece().at(),
                    "The slots of `" + state.name() + "` differ: " + words(difference) + ".",
                    "Write exactly the slots of the source, each where the sentence needs it.")
                .withBecause("source line " + state.source().get().piece().at().line()));
  }

  /** A slot that the source misspells has its own finding. */
  private static boolean known(TextPiece source, Library library) {
    return source.piece().slots().stream()
        .map(Inline.Slot::name)
        .allMatch(
            name ->
                SlotTable.isStatement(name)
                    ? library.statement(name).isPresent()
                    : SlotTable.knows(name));
  }

  private static String words(SlotDifference difference) {
    List<String> words = new ArrayList<>();
    add("lost", difference.lost(), words);
    add("doubled", difference.doubled(), words);
    add("invented", difference.invented(), words);
    return String.join("; ", words);
  }

  private static void add(String kind, List<String> names, List<String> into) {
    if (!names.isEmpty()) {
      into.add(kind + " `{" + String.join("}`, `{", names) + "}`");
    }
  }
}
