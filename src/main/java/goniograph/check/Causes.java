package goniograph.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Why something is found, with the steps it concerns, put together for one finding. */
public final class Causes {
  private final int steps;
  private final Map<String, SortedSet<Integer>> stepsOf = new LinkedHashMap<>();
  private final Map<String, String> told = new LinkedHashMap<>();

  /**
   * None yet.
   *
   * @param steps how many steps the entry has
   */
  public Causes(int steps) {
    this.steps = steps;
  }

  /** One more, on one step. */
  public void add(Reason reason, int step) {
    told.putIfAbsent(reason.words(), reason.told());
    stepsOf.computeIfAbsent(reason.words(), words -> new TreeSet<>()).add(step);
  }

  /** {@code hold 30 s} where every step has it, {@code step 2: hold 30 s} where some have. */
  public String words() {
    return stepsOf.entrySet().stream()
        .map(one -> words(told.getOrDefault(one.getKey(), ""), List.copyOf(one.getValue())))
        .collect(Collectors.joining("; "));
  }

  private String words(String reason, List<Integer> on) {
    return on.size() == steps ? reason : Words.onSteps(on, reason);
  }
}
