package goniograph.matter;

import goniograph.source.Span;
import java.util.function.Function;

/** A value and the place it was read from. */
public record Located<T>(T value, Span at) {

  /** The value made from this one, at the same place. */
  public <R> Located<R> map(Function<? super T, ? extends R> to) {
    return new Located<>(to.apply(value), at);
  }
}
