package goniograph.library;

import goniograph.matter.Located;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What makes a row of a rule table fire: one of the first words, and one of the second where there
 * are any.
 *
 * @param when properties; in the table of tags also names of rules
 * @param and what must hold besides; empty where nothing must
 * @param numbers the limits that the properties are worked out with, in the base units s, cm, deg
 *     or plain
 */
public record Trigger(
    List<Located<String>> when, List<Located<String>> and, Map<String, Bound> numbers) {
  public Trigger {
    when = List.copyOf(when);
    and = List.copyOf(and);
    numbers = Collections.unmodifiableMap(new TreeMap<>(numbers));
  }
}
