package goniograph.matter;

import java.util.Optional;

/** How one kind of value is spelt. */
@FunctionalInterface
public interface Spelling<T> {

  /** The value of a scalar as typed, or nothing after one refusal. */
  Optional<T> read(String raw, Refusal refusal);

  /** Takes the reason why a text is no such value. */
  @FunctionalInterface
  interface Refusal {

    /** Says in one sentence what is wrong with the text and how to mend it. */
    void because(String rule, String what, String mend);
  }
}
