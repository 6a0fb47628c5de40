package goniograph.matter;

import goniograph.finding.MendGrade;
import java.util.Optional;
import java.util.function.Function;

/** How one kind of value is spelt. */
@FunctionalInterface
public interface Spelling<T> {

  /** The value of a scalar as typed, or nothing after one refusal. */
  Optional<T> read(String raw, Refusal refusal);

  /** What it takes, for a schema. */
  default Shape shape() {
    return Shape.TEXT;
  }

  /** The same spelling, which says of itself what it takes. */
  default Spelling<T> shaped(Shape shape) {
    Spelling<T> reader = this;
    return new Spelling<>() {
      @Override
      public Optional<T> read(String raw, Refusal refusal) {
        return reader.read(raw, refusal);
      }

      @Override
      public Shape shape() {
        return shape;
      }
    };
  }

  /** The same spelling of another value. */
  default <U> Spelling<U> map(Function<T, U> made) {
    Spelling<U> mapped = (raw, refusal) -> read(raw, refusal).map(made);
    return mapped.shaped(shape());
  }

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
