package goniograph.check;

import goniograph.finding.Finding;
import goniograph.register.Reason;
import goniograph.register.Standing;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What keeps sheets from being final, said once a place. What is to be said of several texts of one
 * file is one sentence that lists them; what differs is a sentence of its own.
 *
 * @param first the first finding at the place
 * @param sentences what is listed in each sentence, by the sentence with {@link #HERE} in its place
 */
record Gathered(Finding first, Map<String, Set<String>> sentences) {
  private static final String HERE = "\u0000";

  /**
   * The findings in the order in which the first of each place comes; shared files have no entry.
   */
  static Collection<Finding> of(List<Standing> standings) {
    Map<List<String>, Gathered> places = new LinkedHashMap<>();
    for (Standing standing : standings) {
      for (Reason reason : standing.reasons()) {
        Finding one = reason.finding();
        places
            .computeIfAbsent(
                List.of(one.rule(), one.at().file(), one.language()),
                place -> new Gathered(unowned(one), new LinkedHashMap<>()))
            .add(one.what(), reason.about());
      }
    }
    return places.values().stream().map(Gathered::finding).toList();
  }

  private static Finding unowned(Finding one) {
    return one.at().file().startsWith("shared/") ? one.withEntry("") : one;
  }

  private void add(String what, String about) {
    String sentence = about.isEmpty() ? what : what.replace(about, HERE);
    sentences.computeIfAbsent(sentence, same -> new LinkedHashSet<>()).add(about);
  }

  private Finding finding() {
    return first.withWhat(
        sentences.entrySet().stream()
            .map(one -> one.getKey().replace(HERE, String.join(", ", one.getValue())))
            .collect(Collectors.joining(" ")));
  }
}
