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
   */
  public record Phase(
      Located<Weeks> weeks,
      List<Located<String>> add,
      List<Located<String>> drop,
      List<Precaution.Swap> replace) {
    public Phase {
      add = List.copyOf(add);
      drop = List.copyOf(drop);
      replace = List.copyOf(replace);
    }
  }

  /** First and last week, counted from 1. */
  public record Weeks(int first, int last) {}
}
