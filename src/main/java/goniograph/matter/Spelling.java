package goniograph.matter;

import goniograph.finding.MendGrade;
import java.util.Optional;

/** How one kind of value is spelt. */
@FunctionalInterface
public interface Spelling<T> {

  /** The value of a scalar as typed, or nothing after one refusal. */
  Optional<T> read(String raw, Refusal refusal);

  /** Takes the reason why a text is no such value. */
  @FunctionalInterface
  interface Refusal {

    /**
     * Says in one sentence what is wrong with the text and how to mend it.
     *
     * @param grade how far {@code better} may be trusted; {@code SHOW} where nothing stands ready
     * @param better what would stand there instead
     */
    void because(String rule, String what, String mend, MendGrade grade, String better);

    /** Says what is wrong where no better text stands ready. */
    default void because(String rule, String what, String mend) {
      because(rule, what, mend, MendGrade.SHOW, "");
    }
  }
}
