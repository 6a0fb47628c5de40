package goniograph.dose;

import java.util.Optional;
import java.util.function.Function;

/** What reading a text gave: a value, or the one fault that kept it from being one. */
public sealed interface Parsed<T> {

  /** The value. */
  record Good<T>(T got) implements Parsed<T> {}

  /** The fault. */
  record Bad<T>(Fault why) implements Parsed<T> {}

  /** The value, if there is one. */
  default Optional<T> value() {
    return this instanceof Good<T> good ? Optional.of(good.got()) : Optional.empty();
  }

  /** The fault, if there is one. */
  default Optional<Fault> fault() {
    return this instanceof Bad<T> bad ? Optional.of(bad.why()) : Optional.empty();
  }

  /** The same with the value turned into another. */
  default <R> Parsed<R> map(Function<T, R> turn) {
    return fault()
        .<Parsed<R>>map(Bad::new)
        .orElseGet(() -> new Good<>(turn.apply(value().orElseThrow())));
  }
}
