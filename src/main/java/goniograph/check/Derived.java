package goniograph.check;

import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.library.Trigger;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What an entry must carry on one step, and why: the one function that rules and sheets ask.
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
   * @param reason the property that made it fire
   */
  public record Because(Requirement row, Reason reason) {}

  /** What follows from an exercise on one step. */
  public static Derived of(Library library, StepFacts facts, Exercise exercise, Rung rung) {
    return of(library.requirements(), facts, exercise, rung);
  }

  /** What follows from these rows alone. */
  public static Derived of(List<Requirement> rows, StepFacts facts, Exercise exercise, Rung rung) {
    OnStep step = new OnStep(exercise, rung, facts.solved(rung), Texts.of(exercise));
    return of(rows, trigger -> fired(trigger, step));
  }

  /** What follows from the texts of an entry that has no steps. */
  public static Derived of(List<Requirement> rows, Entry entry) {
    Texts texts = Texts.of(entry);
    return of(rows, trigger -> both(trigger, word -> Property.reason(word.value(), texts)));
  }

  private static Derived of(List<Requirement> rows, Function<Trigger, Optional<Reason>> fired) {
    return new Derived(
        rows.stream()
            .flatMap(row -> fired.apply(row.trigger()).map(r -> new Because(row, r)).stream())
            .toList());
  }

  private static Optional<Reason> fired(Trigger trigger, OnStep step) {
    Limits limits = new Limits(trigger.numbers());
    return both(trigger, word -> Property.reason(word.value(), step, limits));
  }

  /** The first reason why one of the first words holds, if one of the second does too. */
  static Optional<Reason> both(
      Trigger trigger, Function<Located<String>, Optional<Reason>> reason) {
    Optional<Reason> and = any(trigger.and(), reason);
    return trigger.and().isEmpty() || and.isPresent()
        ? any(trigger.when(), reason)
            .map(
                first ->
                    new Reason(
                        first.words() + and.map(also -> ", " + also.words()).orElse(""),
                        first.at()))
        : Optional.empty();
  }

  private static Optional<Reason> any(
      List<Located<String>> words, Function<Located<String>, Optional<Reason>> reason) {
    return words.stream().flatMap(word -> reason.apply(word).stream()).findFirst();
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

  /** The tags that must be handled in an exercise of this type, in the order of the table. */
  public Set<String> tags(Type type) {
    Set<String> tags = new LinkedHashSet<>();
    because.stream()
        .filter(one -> one.row().tagsUnlessType().filter(t -> t.value() == type).isEmpty())
        .forEach(one -> add(one.row().tags(), tags));
    return tags;
  }

  private static void add(Collection<Located<String>> ids, Set<String> into) {
    ids.forEach(id -> into.add(id.value()));
  }
}
