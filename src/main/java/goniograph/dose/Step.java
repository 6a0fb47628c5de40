package goniograph.dose;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One step of a ladder: only what it changes.
 *
 * @param n its number, from 1
 * @param changes the dose fields it gives
 * @param others the other fields it gives, by dotted key and as typed: {@code support.need}, {@code
 *     stance}, {@code vision}, {@code surface}, {@code head_movement}, {@code supervision}, {@code
 *     figure}
 * @param stayAtLeast the least time to stay on it
 * @param whoDecides who decides on going up from it, if not as in the ladder
 */
public record Step(
    int n,
    Dose changes,
    Map<String, String> others,
    Optional<Quantity> stayAtLeast,
    Optional<Decider> whoDecides) {
  public Step {
    others = Collections.unmodifiableMap(new TreeMap<>(others));
  }
}
