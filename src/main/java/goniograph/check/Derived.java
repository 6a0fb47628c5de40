package goniograph.check;

import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.matter.Located;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What an exercise must carry on one step, and why: the one function that rules and sheets ask.
 *
 * @param because the rows of the rule table that fired, in the order of the table
 */
public record Derived(List<Because> because) {
  public Derived {
    because = List.copyOf(because);
  }

  /**
   * A row that fired.
   *
   * @param row the row: its rule, statements, tags and source
   * @param property the property that made it fire, in words: {@code hold 30 s}
   */
  public record Because(Requirement row, String property) {}

  /** What follows from an exercise on one step. */
  public static Derived of(Library library, StepFacts facts, Exercise exercise, Rung rung) {
    return new Derived(
        library.requirements().stream()
            .flatMap(row -> fired(new Situation(exercise, rung, facts.facts(rung), row)).stream())
            .toList());
  }

  private static Optional<Because> fired(Situation situation) {
    return Property.reason(situation).map(property -> new Because(situation.row(), property));
  }

  /** What follows on any step. */
  static Set<String> statementsOfAll(Library library, StepFacts facts, Entry entry) {
    Set<String> all = new LinkedHashSet<>();
    if (entry instanceof Exercise exercise) {
      exercise.rungs().forEach(rung -> all.addAll(of(library, facts, exercise, rung).statements()));
    }
    return all;
  }

  /** The rows of this rule that fired. */
  public List<Because> by(String rule) {
    return because.stream().filter(one -> one.row().rule().value().equals(rule)).toList();
  }

  /** The statements that must be carried, in the order of the table. */
  public Set<String> statements() {
    Set<String> statements = new LinkedHashSet<>();
    because.forEach(one -> add(one.row().statements(), statements));
    return statements;
  }

  /** The tags that must be handled, in the order of the table. */
  public Set<String> tags() {
    Set<String> tags = new LinkedHashSet<>();
    because.forEach(one -> add(one.row().tags(), tags));
    return tags;
  }

  private static void add(Collection<Located<String>> ids, Set<String> into) {
    ids.forEach(id -> into.add(id.value()));
  }
}
