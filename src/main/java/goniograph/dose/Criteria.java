package goniograph.dose;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Criteria for going up or down.
 *
 * @param values those given, in the order of {@link Criterion}; counts, and {@code settled}
 */
public record Criteria(Map<Criterion, DoseValue> values) {
  /** No criteria. */
  public static final Criteria NONE = new Criteria(Map.of());

  public Criteria {
    EnumMap<Criterion, DoseValue> ordered = new EnumMap<>(Criterion.class);
    ordered.putAll(values);
    values = Collections.unmodifiableMap(ordered);
  }

  /** Whether none is given. */
  public boolean isEmpty() {
    return values.isEmpty();
  }
}
