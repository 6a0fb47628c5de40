package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.PrintedStatements;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Spellings;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** More sentences in the stop box than anybody reads. */
public final class StopBoxFull implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "stop-box-full",
          "More than three sentences to call the emergency number, four to stop and call us, or two"
              + " to ease off would print on the sheet of one step.",
          "The box must be read in a moment of fright; a simpler exercise is the answer, never a"
              + " smaller letter.",
          RulePage.PRACTICE,
          Acceptance.SIGNED_TABLE,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "statements: [s-chair-wall, s-rise-wait, s-dizzy-stop, s-chest, s-worse, s-pain-ease,"
                  + " s-morning]",
              "statements: «[s-chair-wall, s-rise-wait, s-dizzy-stop, s-chest, s-worse, s-spread,"
                  + " s-calf, s-give-way, s-pain-ease, s-morning]»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    return checked
        .entries()
        .flatMap(
            entry ->
                printed(entry, checked)
                    .flatMap(one -> tooMany(one, entry).stream())
                    .findFirst()
                    .stream());
  }

  /** What prints on one step; the step is 0 where there are none. */
  private record OnStep(int step, PrintedStatements printed) {}

  private static Stream<OnStep> printed(Entry entry, Checked checked) {
    return entry instanceof Exercise exercise
        ? steps(exercise, PrintedStatements.ofAll(checked.library(), checked.poses(), exercise))
        : Stream.of(new OnStep(0, PrintedStatements.of(checked.library(), entry)));
  }

  private static Stream<OnStep> steps(Exercise exercise, List<PrintedStatements> printed) {
    List<Rung> rungs = exercise.rungs();
    return IntStream.range(0, rungs.size())
        .mapToObj(i -> new OnStep(rungs.get(i).n(), printed.get(i)));
  }

  private Optional<Finding> tooMany(OnStep one, Entry entry) {
    String levels =
        PrintedStatements.MOST.keySet().stream()
            .sorted()
            .filter(level -> one.printed().of(level).size() > most(level))
            .map(level -> words(level, one))
            .collect(Collectors.joining("; "));
    return levels.isEmpty()
        ? Optional.empty()
        : Optional.of(
            error(
                    place(entry),
                    "The stop box would hold too much: " + levels + ".",
                    "Make two simpler entries, or take out statements that no rule asks for.")
                .withBecause(one.step() == 0 ? "" : "step " + one.step())
                .withEntry(entry.id()));
  }

  private static int most(Urgency level) {
    return PrintedStatements.MOST.getOrDefault(level, Integer.MAX_VALUE);
  }

  private static String words(Urgency level, OnStep one) {
    return one.printed().of(level).size()
        + " of level "
        + Spellings.word(level)
        + ", at most "
        + most(level);
  }

  private static Span place(Entry entry) {
    return entry
        .common()
        .frontMatter()
        .get("statements")
        .map(node -> node.at())
        .orElseGet(() -> Places.start(entry.common().frontMatter().at()));
  }
}
