package goniograph.check;

import goniograph.source.Span;
import java.util.Optional;

/**
 * What made a rule fire.
 *
 * @param words the property: {@code hold 30 s}, or what the solved pose shows and at which key
 *     frame
 * @param at where the field or text stands; empty for what is worked out
 */
public record Reason(String words, Optional<Span> at) {

  /** Something worked out. */
  static Reason of(String words) {
    return new Reason(words, Optional.empty());
  }

  /** Something written. */
  static Reason at(String words, Span at) {
    return new Reason(words, Optional.of(at));
  }

  /** {@code hold 30 s (line 31)}. */
  public String told() {
    return words + at.map(place -> " (line " + place.line() + ")").orElse("");
  }
}
