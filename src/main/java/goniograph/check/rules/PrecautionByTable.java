package goniograph.check.rules;

import goniograph.check.Causes;
import goniograph.check.Checked;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.check.Strictness;
import goniograph.check.Strictness.Laxness;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Precaution;
import goniograph.library.TagRule;
import goniograph.library.Vocabulary.Action;
import goniograph.source.Span;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The rule of a precaution tag: what an entry says for the tag may be stricter than the clinic's
 * table, and laxer only as far as the table lets it. A table without a row for the tag is said to
 * have none.
 */
final class PrecautionByTable implements Rule {
  private final RulePage page;

  PrecautionByTable(RulePage page) {
    this.page = page;
  }

  @Override
  public RulePage page() {
    return page;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    List<TagRule> rows =
        checked.library().tagRules().stream()
            .filter(row -> row.rule().equals(page.name()))
            .toList();
    Stream<Finding> lax =
        checked
            .exercises()
            .filter(checked::readWell)
            .flatMap(exercise -> check(exercise, rows, checked));
    return rows.isEmpty() ? none(checked).stream() : lax;
  }

  private Stream<Finding> check(Exercise exercise, List<TagRule> rows, Checked checked) {
    return exercise.precautions().stream()
        .filter(own -> rows.stream().anyMatch(row -> row.region(own.tag().value()).isPresent()))
        .flatMap(own -> check(exercise, own, rows, checked).stream())
        .map(finding -> finding.withEntry(exercise.id()));
  }

  private Optional<Finding> check(
      Exercise exercise, Precaution own, List<TagRule> rows, Checked checked) {
    if (Strictness.onlyThePack(checked.library(), own.tag().value())
        && own.action().value() != Action.LEAVE_OUT) {
      return Optional.of(
          error(
              own.action().at(),
              "`" + own.tag().value() + "` acts on the pack, not on an entry: this does nothing.",
              "Take the line out, or write `action: leave-out` if that is meant."));
    }
    List<Laxness> all = Strictness.of(checked.library(), checked.poses(), exercise, own);
    return all.stream().findFirst().map(first -> finding(first.at(), all, exercise, rows));
  }

  private Finding finding(Span at, List<Laxness> all, Exercise exercise, List<TagRule> rows) {
    Set<String> whats = new LinkedHashSet<>();
    Set<String> mends = new LinkedHashSet<>();
    Causes causes = new Causes(exercise.rungs().size());
    for (Laxness one : all) {
      whats.add(one.what());
      mends.add(one.mend());
      causes.add(one.because(), one.step());
    }
    return error(at, String.join(" ", whats), String.join(" ", mends))
        .withBecause(causes.words())
        .withSource(rows.get(0).source().value());
  }

  /** The table has rows, and none for this tag. */
  private Optional<Finding> none(Checked checked) {
    return checked.library().tagRules().stream()
        .findFirst()
        .map(
            first ->
                note(
                    first.at(),
                    "The table has no row for `" + page.name().substring("tag-".length()) + "`.",
                    "Add a row, or let it be: whoever marks the tag is told that there are no"
                        + " rules for it."));
  }
}
