package goniograph.dose;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All that makes one step of a ladder easy or hard, whole: what the step gives, laid over what the
 * entry gives.
 *
 * @param dose the dose
 * @param words the balance words by dotted key and as typed: {@code support.need}, {@code stance},
 *     {@code vision}, {@code surface}, {@code head_movement}
 * @param degrees the widths of the joints' ranges, added up
 */
public record StepLoad(Dose dose, Map<String, String> words, Optional<BigDecimal> degrees) {
  public StepLoad {
    words = Collections.unmodifiableMap(new TreeMap<>(words));
  }

  /** A dose and nothing else. */
  public static StepLoad of(Dose dose) {
    return new StepLoad(dose, Map.of(), Optional.empty());
  }
}
