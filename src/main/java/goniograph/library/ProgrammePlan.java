package goniograph.library;

import goniograph.matter.Located;
import java.util.ArrayList;
import java.util.List;

/**
 * A programme carried out: what runs in which phase, worked out from what each phase adds, drops,
 * replaces and sets to a step.
 *
 * @param phases the phases in the order of the file
 * @param slips what could not be carried out
 */
public record ProgrammePlan(List<PlannedPhase> phases, List<Slip> slips) {
  public ProgrammePlan {
    phases = List.copyOf(phases);
    slips = List.copyOf(slips);
  }

  /** What can go wrong with an id or step that a phase names. */
  public enum Fault {
    /** There is no exercise or advice topic with this id. */
    UNKNOWN,
    /** It runs already. */
    RUNS_ALREADY,
    /** It does not run, so that it cannot end, be replaced or be set to a step. */
    DOES_NOT_RUN,
    /** Its ladder has no such step. */
    NO_SUCH_STEP
  }

  /**
   * Something that a phase asks for and that cannot be done.
   *
   * @param id the entry it names
   * @param others ids that would have been possible; of a step none
   */
  public record Slip(Fault fault, Located<String> id, List<String> others) {
    public Slip {
      others = List.copyOf(others);
    }
  }

  /** Carries out a programme. What cannot be done is left out and told. */
  public static ProgrammePlan of(Programme programme, Library library) {
    ProgrammeCourse course = new ProgrammeCourse(library);
    List<PlannedPhase> phases = new ArrayList<>();
    programme.phases().forEach(phase -> phases.add(course.next(phase)));
    return new ProgrammePlan(phases, course.slips());
  }
}
