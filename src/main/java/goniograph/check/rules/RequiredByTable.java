package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.check.Derived;
import goniograph.check.ExerciseRule;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Supervision;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A rule that is a row of the clinic's table: if a step has the property, the entry must list the
 * statements and handle the tags. All that is missing is one finding.
 */
abstract class RequiredByTable implements ExerciseRule {

  /** One thing that is missing, and what to write. */
  record Gap(String what, String mend) {}

  /** What one rule asks of a step beyond its row. */
  Stream<Gap> more(Exercise exercise, Rung rung, Requirement row, Checked checked) {
    return Stream.empty();
  }

  @Override
  public final Stream<Finding> check(Exercise exercise, Checked checked) {
    Set<Gap> gaps = new LinkedHashSet<>();
    Map<String, List<Integer>> because = new LinkedHashMap<>();
    Optional<Requirement> fired = Optional.empty();
    for (Rung rung : exercise.rungs()) {
      for (Derived.Because one :
          Derived.of(checked.library(), checked.poses(), exercise, rung).by(page().name())) {
        List<Gap> found = gaps(exercise, rung, one.row(), checked);
        if (!found.isEmpty()) {
          gaps.addAll(found);
          because.computeIfAbsent(one.property(), property -> new ArrayList<>()).add(rung.n());
          fired = Optional.of(one.row());
        }
      }
    }
    return fired.map(row -> finding(exercise, gaps, because(exercise, because), row)).stream();
  }

  /** {@code hold 30 s} where every step has it, {@code step 2: hold 30 s} where some have. */
  private static String because(Exercise exercise, Map<String, List<Integer>> steps) {
    int all = exercise.rungs().size();
    return steps.entrySet().stream()
        .map(
            one ->
                one.getValue().size() == all
                    ? one.getKey()
                    : Words.onSteps(one.getValue(), one.getKey()))
        .collect(Collectors.joining("; "));
  }

  private Finding finding(Exercise exercise, Set<Gap> gaps, String because, Requirement row) {
    return error(
            place(exercise),
            gaps.stream().map(Gap::what).distinct().collect(Collectors.joining(" ")),
            gaps.stream().map(Gap::mend).distinct().collect(Collectors.joining(" ")))
        .withBecause(because)
        .withSource(row.source().value());
  }

  /** The list of statements; where there is none, the beginning of the front matter. */
  private static Span place(Exercise exercise) {
    return exercise
        .common()
        .frontMatter()
        .get("statements")
        .map(node -> node.at())
        .orElseGet(() -> Places.start(exercise.common().frontMatter().at()));
  }

  private List<Gap> gaps(Exercise exercise, Rung rung, Requirement row, Checked checked) {
    List<Gap> gaps = new ArrayList<>();
    List<String> statements = missing(exercise, row, checked.library());
    if (!statements.isEmpty()) {
      gaps.add(
          new Gap(
              "The entry does not list " + Words.listed(statements) + ".",
              "Add " + Words.listed(statements) + " to `statements`."));
    }
    List<String> tags = unhandled(exercise, row);
    if (!tags.isEmpty()) {
      gaps.add(
          new Gap(
              "Nothing says what to do for patients with " + Words.listed(tags) + ".",
              "Add to `precautions`: `{ tag: "
                  + tags.get(0)
                  + ", action: leave-out }`, or adapt."));
    }
    supervision(rung, row).ifPresent(gaps::add);
    more(exercise, rung, row, checked).forEach(gaps::add);
    return gaps;
  }

  /** A statement that is listed misspelt is not missing too. */
  private static List<String> missing(Exercise exercise, Requirement row, Library library) {
    List<String> known = library.statements().stream().map(one -> one.id().value()).toList();
    Set<String> listed =
        exercise.statements().stream()
            .map(Located::value)
            .map(id -> known.contains(id) ? id : Nearest.of(id, known).orElse(id))
            .collect(Collectors.toSet());
    return row.statements().stream()
        .map(Located::value)
        .filter(id -> !listed.contains(id))
        .toList();
  }

  private static List<String> unhandled(Exercise exercise, Requirement row) {
    if (row.tagsUnlessType().filter(t -> t.value() == exercise.type().value()).isPresent()) {
      return List.of();
    }
    Set<String> handled =
        exercise.precautions().stream().map(one -> one.tag().value()).collect(Collectors.toSet());
    return row.tags().stream().map(Located::value).filter(tag -> !handled.contains(tag)).toList();
  }

  private static Optional<Gap> supervision(Rung rung, Requirement row) {
    Optional<Supervision> least = row.supervision().map(Located::value);
    Optional<Supervision> given = rung.conditions().supervision().map(Located::value);
    return least
        .filter(wanted -> given.filter(is -> is.compareTo(wanted) >= 0).isEmpty())
        .map(
            wanted ->
                new Gap(
                    "Step " + rung.n() + " needs `supervision: " + Spellings.word(wanted) + "`.",
                    "Write `supervision: " + Spellings.word(wanted) + "` or more in that step."));
  }
}
