package goniograph.library;

import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Programme.Phase;
import goniograph.library.ProgrammePlan.Fault;
import goniograph.library.ProgrammePlan.Slip;
import goniograph.matter.Located;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What runs in a programme, carried on from phase to phase. */
final class ProgrammeCourse {
  private final Library library;
  private final Map<String, Located<String>> running = new LinkedHashMap<>();
  private final Map<String, Located<Integer>> steps = new LinkedHashMap<>();
  private final List<Slip> slips = new ArrayList<>();

  ProgrammeCourse(Library library) {
    this.library = library;
  }

  /** Carries out the next phase. */
  PlannedPhase next(Phase phase) {
    phase.drop().forEach(this::drop);
    phase.replace().forEach(swap -> replace(swap.from(), swap.to()));
    phase.add().forEach(this::add);
    phase.steps().forEach(this::step);
    return new PlannedPhase(
        phase,
        running.values().stream().flatMap(id -> turn(id).stream()).toList(),
        running.values().stream().flatMap(id -> topic(id).stream()).toList());
  }

  /** What could not be carried out so far. */
  List<Slip> slips() {
    return List.copyOf(slips);
  }

  private void add(Located<String> id) {
    if (startable(id)) {
      running.put(id.value(), id);
    }
  }

  private boolean startable(Located<String> id) {
    if (running.containsKey(id.value())) {
      slips.add(new Slip(Fault.RUNS_ALREADY, id, List.of()));
      return false;
    }
    boolean known =
        library.entry(id.value()).filter(entry -> !(entry instanceof Programme)).isPresent();
    if (!known && !library.broken().contains(id.value())) {
      slips.add(new Slip(Fault.UNKNOWN, id, startable()));
    }
    return known;
  }

  private List<String> startable() {
    return library.entries().stream()
        .filter(entry -> !(entry instanceof Programme))
        .map(Entry::id)
        .toList();
  }

  private void drop(Located<String> id) {
    if (runs(id)) {
      running.remove(id.value());
      steps.remove(id.value());
    }
  }

  private boolean runs(Located<String> id) {
    boolean runs = running.containsKey(id.value());
    if (!runs && !library.broken().contains(id.value())) {
      slips.add(new Slip(Fault.DOES_NOT_RUN, id, List.copyOf(running.keySet())));
    }
    return runs;
  }

  /** The new entry takes the place of the old one in the order of the sheet. */
  private void replace(Located<String> from, Located<String> to) {
    if (!runs(from) || !startable(to)) {
      return;
    }
    Map<String, Located<String>> before = new LinkedHashMap<>(running);
    running.clear();
    before.forEach(
        (id, at) -> {
          boolean replaced = id.equals(from.value());
          running.put(replaced ? to.value() : id, replaced ? to : at);
        });
    steps.remove(from.value());
  }

  private void step(Programme.OnStep set) {
    if (!runs(set.entry())) {
      return;
    }
    Optional<Exercise> exercise = library.exercise(set.entry().value());
    if (exercise.flatMap(one -> one.rung(set.step().value())).isPresent()) {
      steps.put(set.entry().value(), set.step());
    } else {
      slips.add(
          new Slip(
              Fault.NO_SUCH_STEP,
              new Located<>(set.entry().value(), set.step().at()),
              exercise.stream()
                  .flatMap(one -> one.rungs().stream())
                  .map(rung -> String.valueOf(rung.n()))
                  .toList()));
    }
  }

  private Optional<Turn> turn(Located<String> id) {
    return library
        .exercise(id.value())
        .map(
            exercise -> {
              Optional<Rung> set =
                  Optional.ofNullable(steps.get(id.value()))
                      .flatMap(step -> exercise.rung(step.value()));
              return new Turn(exercise, set.orElseGet(exercise::start), id.at());
            });
  }

  private Optional<Advice> topic(Located<String> id) {
    return library.entry(id.value()).filter(Advice.class::isInstance).map(Advice.class::cast);
  }
}
