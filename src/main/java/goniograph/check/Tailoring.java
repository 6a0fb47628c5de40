package goniograph.check;

import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Rung;
import goniograph.library.TagRule;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What follows for an entry and the tags of a patient's situation: the one function that the check
 * of entries and the making of a pack ask. It shows what the rules say; a therapist decides.
 *
 * @param entry the entry's id
 * @param steps what follows on each step, in order; one for an entry without steps
 * @param unruled tags about which neither the clinic's table nor the entry says anything: the
 *     therapist's judgement
 */
public record Tailoring(String entry, List<StepTailoring> steps, List<String> unruled) {
  public Tailoring {
    steps = List.copyOf(steps);
    unruled = List.copyOf(unruled);
  }

  /**
   * What follows.
   *
   * @param facts gives the solved pose of each step
   * @param tags the tags that are marked, in the order in which they are told
   */
  public static Tailoring of(
      Library library, StepFacts facts, Entry entry, Collection<String> tags) {
    Set<String> marked = new LinkedHashSet<>(tags);
    List<StepTailoring> steps =
        entry instanceof Exercise exercise
            ? exercise.rungs().stream().map(r -> of(library, facts, exercise, r, marked)).toList()
            : List.of(new TagResolver(library, entry).withoutSteps(marked));
    return new Tailoring(entry.id(), steps, unruled(library, entry, marked));
  }

  /** What follows on one step of an exercise. */
  public static StepTailoring of(
      Library library, StepFacts facts, Exercise exercise, Rung rung, Collection<String> tags) {
    OnStep step = new OnStep(exercise, rung, facts.solved(rung), Texts.of(exercise));
    return new TagResolver(library, exercise).on(step, new LinkedHashSet<>(tags));
  }

  private static List<String> unruled(Library library, Entry entry, Set<String> tags) {
    return tags.stream()
        .filter(tag -> library.tagRules(tag).isEmpty() && !named(entry, tag))
        .toList();
  }

  private static boolean named(Entry entry, String tag) {
    return entry instanceof Exercise exercise
        && exercise.precautions().stream().anyMatch(own -> own.tag().value().equals(tag));
  }

  /** Whether the whole entry is left out: every step of it is. */
  public boolean leftOut() {
    return steps.stream().allMatch(StepTailoring::leftOut);
  }

  /** Whether a therapist may take a step that is left out; true where none is. */
  public boolean mayOverride() {
    return steps.stream().allMatch(StepTailoring::mayOverride);
  }

  /** The numbers of the steps that remain. */
  public List<Integer> stepsLeft() {
    return steps.stream().filter(step -> !step.leftOut()).map(StepTailoring::step).toList();
  }

  /** What follows on this step. */
  public Optional<StepTailoring> step(int n) {
    return steps.stream().filter(step -> step.step() == n).findFirst();
  }

  /** What the tags do to the pack as a whole, in the order of the table. */
  public static List<TagRule> pack(Library library, Collection<String> tags) {
    return tags.stream()
        .distinct()
        .flatMap(tag -> library.tagRules(tag).stream())
        .filter(row -> !row.pack().equals(TagRule.PackCare.NONE))
        .toList();
  }
}
