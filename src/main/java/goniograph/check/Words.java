package goniograph.check;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Words of findings. */
public final class Words {
  private Words() {}

  /** {@code `a`, `b`, `c`} in this order. */
  public static String listed(Collection<String> ids) {
    return ids.stream().map(id -> "`" + id + "`").collect(Collectors.joining(", "));
  }

  /** {@code step 2: hold 30 s}. */
  public static String onStep(int n, String property) {
    return onSteps(List.of(n), property);
  }

  /** {@code steps 2, 3: hold 30 s}. */
  public static String onSteps(List<Integer> steps, String property) {
    String numbers = steps.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return (steps.size() == 1 ? "step " : "steps ") + numbers + ": " + property;
  }
}
