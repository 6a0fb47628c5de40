package goniograph.check.rules;

import goniograph.check.Rule;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.matter.Located;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Stream;

/** Words about names that lead nowhere. */
final class References {
  private References() {}

  /** An error of the rule for each id that is not known, with the nearest that is. */
  static Stream<Finding> unknown(
      Rule rule,
      Stream<Located<String>> ids,
      String kind,
      Collection<String> known,
      String otherwise) {
    return ids.filter(id -> !known.contains(id.value()))
        .map(
            id ->
                rule.error(
                    id.at(), what(kind, id.value(), known), mend(id.value(), known, otherwise)));
  }

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
                otherwise.substring(0, 1).toUpperCase(Locale.ROOT) + otherwise.substring(1) + ".");
  }
}
