package goniograph.dose;

import java.util.Optional;

/**
 * One step of a ladder: only what it changes.
 *
 * @param n its number, from 1
 * @param changes the dose fields it gives
 * @param stayAtLeast the least time to stay on it
 * @param whoDecides who decides on going up from it, if not as in the ladder
 */
public record Step(
    int n, Dose changes, Optional<Quantity> stayAtLeast, Optional<Decider> whoDecides) {}
