package goniograph.library;

import goniograph.matter.Located;
import java.util.List;

/**
 * A programme: which entries in which weeks.
 *
 * @param common what every entry has
 * @param forTags the tags it is meant for
 * @param phases its phases in order
 */
public record Programme(Common common, List<Located<String>> forTags, List<Phase> phases)
    implements Entry {
  public Programme {
    forTags = List.copyOf(forTags);
    phases = List.copyOf(phases);
  }

  /**
   * One phase.
   *
   * @param weeks first and last week, counted from 1
   * @param add ids of entries that begin
   * @param drop ids of entries that end
   * @param replace ids of entries that take another's place
   * @param steps the step on which an entry runs from here on; without one it runs on its start
   *     step
   */
  public record Phase(
      Located<Weeks> weeks,
      List<Located<String>> add,
      List<Located<String>> drop,
      List<Precaution.Swap> replace,
      List<OnStep> steps) {
    public Phase {
      add = List.copyOf(add);
      drop = List.copyOf(drop);
      replace = List.copyOf(replace);
      steps = List.copyOf(steps);
    }
  }

  /** The step on which an entry runs. */
  public record OnStep(Located<String> entry, Located<Integer> step) {}

  /** First and last week, counted from 1. */
  public record Weeks(int first, int last) {}
}
