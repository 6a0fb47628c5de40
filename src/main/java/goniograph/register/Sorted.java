package goniograph.register;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/** Unchanging maps in the order of their keys. */
final class Sorted {
  private Sorted() {}

  static <V> SortedMap<String, V> copy(SortedMap<String, V> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }

  static <V> SortedMap<String, V> with(SortedMap<String, V> map, String key, V value) {
    TreeMap<String, V> changed = new TreeMap<>(map);
    changed.put(key, value);
    return Collections.unmodifiableSortedMap(changed);
  }
}
