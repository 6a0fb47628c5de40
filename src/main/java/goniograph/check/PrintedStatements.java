package goniograph.check;

import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Rung;
import goniograph.library.Statement;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Located;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The statements that print on the sheet of one step: those the entry lists, without those that
 * only other steps need, in the order of the statement file.
 *
 * @param byUrgency the statements of every level, most urgent level first; an empty list where none
 */
public record PrintedStatements(Map<Urgency, List<Statement>> byUrgency) {
  /** The most lines of each level of the stop box. */
  public static final Map<Urgency, Integer> MOST =
      Map.of(Urgency.EMERGENCY, 3, Urgency.CALL_US, 4, Urgency.EASE_OFF, 2);

  public PrintedStatements {
    Map<Urgency, List<Statement>> ordered = new EnumMap<>(Urgency.class);
    for (Urgency urgency : Urgency.values()) {
      ordered.put(urgency, List.copyOf(byUrgency.getOrDefault(urgency, List.of())));
    }
    byUrgency = Collections.unmodifiableMap(ordered);
  }

  /**
   * The statements on one step of an exercise.
   *
   * @param facts gives the facts of the pose of every step, also of those that do not print
   */
  public static PrintedStatements of(
      Library library, StepFacts facts, Exercise exercise, Rung rung) {
    return ofAll(library, facts, exercise).get(exercise.rungs().indexOf(rung));
  }

  /** The statements on each step of an exercise, in the order of its steps. */
  public static List<PrintedStatements> ofAll(Library library, StepFacts facts, Exercise exercise) {
    List<Set<String>> needed =
        exercise.rungs().stream()
            .map(rung -> Derived.of(library, facts, exercise, rung).statements())
            .toList();
    return needed.stream().map(here -> of(library, exercise, elsewhere(here, needed))).toList();
  }

  private static Set<String> elsewhere(Set<String> here, List<Set<String>> needed) {
    return needed.stream()
        .flatMap(Set::stream)
        .filter(id -> !here.contains(id))
        .collect(Collectors.toSet());
  }

  /** The statements of an entry without steps. */
  public static PrintedStatements of(Library library, Entry entry) {
    return of(library, entry, Set.of());
  }

  private static PrintedStatements of(Library library, Entry entry, Set<String> without) {
    Set<String> listed =
        entry.statements().stream()
            .map(Located::value)
            .filter(id -> !without.contains(id))
            .collect(Collectors.toSet());
    return new PrintedStatements(
        library.statements().stream()
            .filter(statement -> listed.contains(statement.id().value()))
            .collect(Collectors.groupingBy(statement -> statement.urgency().value())));
  }

  /** The statements of one level. */
  public List<Statement> of(Urgency urgency) {
    return byUrgency.getOrDefault(urgency, List.of());
  }
}
