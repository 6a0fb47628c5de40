package goniograph.check.rules;

import goniograph.check.Causes;
import goniograph.check.Checked;
import goniograph.check.Derived;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Supervision;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A rule that is one or more rows of the clinic's table: if a step has the property, the entry must
 * list the statements, and the entry or the clinic's table must handle the tags. All that is
 * missing is one finding, with the properties and steps that ask for it.
 */
class RequiredByTable implements Rule {
  private final RulePage page;

  RequiredByTable(RulePage page) {
    this.page = page;
  }

  @Override
  public final RulePage page() {
    return page;
  }

  /**
   * One thing that is missing.
   *
   * @param at where it should stand; empty where not even its field is there
   * @param what what is missing
   * @param mend what to write
   */
  record Gap(Optional<Span> at, String what, String mend) {}

  /** What one rule asks of a step beyond its row. */
  Stream<Gap> more(Exercise exercise, Rung rung, Requirement row, Checked checked) {
    return Stream.empty();
  }

  @Override
  public final Stream<Finding> check(Checked checked) {
    List<Requirement> rows =
        checked.library().requirements().stream()
            .filter(row -> row.rule().value().equals(page.name()))
            .toList();
    return checked.entries().flatMap(entry -> check(entry, rows, checked).stream());
  }

  private Optional<Finding> check(Entry entry, List<Requirement> rows, Checked checked) {
    Found found = new Found(entry);
    if (entry instanceof Exercise exercise) {
      for (Rung rung : exercise.rungs()) {
        for (Derived.Because one : Derived.of(rows, checked.poses(), exercise, rung).because()) {
          found.add(one, rung.n(), gaps(exercise, rung, one.row(), checked));
        }
      }
    } else {
      for (Derived.Because one : Derived.of(rows, entry).because()) {
        found.add(one, 0, missing(entry, one.row(), checked.library()).stream().toList());
      }
    }
    return found.finding();
  }

  /** What is missing in one entry, and why it is asked for. */
  private final class Found {
    private final Entry entry;
    private final Set<Gap> gaps = new LinkedHashSet<>();
    private final Causes causes;
    private final List<Requirement> fired = new ArrayList<>();

    Found(Entry entry) {
      this.entry = entry;
      this.causes = new Causes(entry instanceof Exercise e ? e.rungs().size() : 1);
    }

    void add(Derived.Because one, int step, List<Gap> found) {
      if (!found.isEmpty()) {
        gaps.addAll(found);
        causes.add(one.reason(), step);
        fired.add(one.row());
      }
    }

    Optional<Finding> finding() {
      return fired.stream()
          .findFirst()
          .map(
              row ->
                  error(
                          place(),
                          said(gaps.stream().map(Gap::what)),
                          said(gaps.stream().map(Gap::mend)))
                      .withBecause(causes.words())
                      .withSource(row.source().value())
                      .withEntry(entry.id()));
    }

    private String said(Stream<String> sentences) {
      return sentences.distinct().collect(Collectors.joining(" "));
    }

    /** Where the first of them should stand; or else where the front matter begins. */
    private Span place() {
      Span matter = entry.common().frontMatter().at();
      return gaps.stream()
          .flatMap(gap -> gap.at().stream())
          .findFirst()
          .orElseGet(() -> Places.start(matter));
    }
  }

  private List<Gap> gaps(Exercise exercise, Rung rung, Requirement row, Checked checked) {
    return Stream.of(
            missing(exercise, row, checked.library()).stream(),
            unhandled(exercise, row, checked.library()).stream(),
            supervision(rung, row).stream(),
            more(exercise, rung, row, checked))
        .flatMap(all -> all)
        .toList();
  }

  /** Where a field of the front matter stands. */
  static Optional<Span> field(Entry entry, String name) {
    return entry.common().frontMatter().get(name).map(node -> node.at());
  }

  /** A statement that is listed misspelt is not missing too. */
  private static Optional<Gap> missing(Entry entry, Requirement row, Library library) {
    List<String> known = library.statements().stream().map(one -> one.id().value()).toList();
    Set<String> listed =
        entry.statements().stream()
            .map(Located::value)
            .map(id -> known.contains(id) ? id : Nearest.of(id, known).orElse(id))
            .collect(Collectors.toSet());
    List<String> missing =
        row.statements().stream().map(Located::value).filter(id -> !listed.contains(id)).toList();
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Gap(
                field(entry, "statements"),
                "The entry does not list " + Words.listed(missing) + ".",
                "Add " + Words.listed(missing) + " to `statements`."));
  }

  /** Tags about which neither the entry nor the clinic's table says anything. */
  private static Optional<Gap> unhandled(Exercise exercise, Requirement row, Library library) {
    if (row.tagsUnlessType().filter(t -> t.value() == exercise.type().value()).isPresent()) {
      return Optional.empty();
    }
    Set<String> handled =
        exercise.precautions().stream().map(one -> one.tag().value()).collect(Collectors.toSet());
    List<String> tags =
        row.tags().stream()
            .map(Located::value)
            .filter(tag -> !handled.contains(tag) && library.tagRules(tag).isEmpty())
            .toList();
    return tags.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Gap(
                field(exercise, "precautions"),
                "Nothing says what to do for patients with " + Words.listed(tags) + ".",
                "Add to `precautions`: `{ tag: "
                    + tags.get(0)
                    + ", action: leave-out }`, or adapt."));
  }

  private static Optional<Gap> supervision(Rung rung, Requirement row) {
    Optional<Supervision> least = row.supervision().map(Located::value);
    Optional<Supervision> given = rung.conditions().supervision().map(Located::value);
    return least
        .filter(wanted -> given.filter(is -> is.compareTo(wanted) >= 0).isEmpty())
        .map(
            wanted ->
                new Gap(
                    Optional.of(rung.conditions().supervision().map(Located::at).orElse(rung.at())),
                    "Step " + rung.n() + " needs `supervision: " + Spellings.word(wanted) + "`.",
                    "Write `supervision: " + Spellings.word(wanted) + "` or more in that step."));
  }
}
