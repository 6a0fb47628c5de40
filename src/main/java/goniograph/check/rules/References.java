package goniograph.check.rules;

import goniograph.finding.Nearest;
import java.util.Collection;

/** Words about names that lead nowhere. */
final class References {
  private References() {}

  /** {@code There is no statement `s-brethe`; did you mean `s-breathe`?} */
  static String what(String kind, String typed, Collection<String> known) {
    String hint = Nearest.hint(typed, known);
    return "There is no " + kind + " `" + typed + "`" + (hint.isEmpty() ? "." : hint);
  }

  /** {@code Write `s-breathe`}, or how to make what is not there. */
  static String mend(String typed, Collection<String> known, String otherwise) {
    return Nearest.of(typed, known)
        .map(near -> "Write `" + near + "`, or " + otherwise + ".")
        .orElseGet(
            () ->
                otherwise.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                    + otherwise.substring(1)
                    + ".");
  }
}
