package goniograph.library;

import goniograph.matter.Located;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The phrases of one language as written: messages in ICU MessageFormat by dotted id.
 *
 * @param language the language tag
 * @param messages the messages, in the order of the file
 * @param lists the values that are lists of words, for instance {@code side-forms}
 */
public record PhraseSource(
    String language,
    Map<String, Located<String>> messages,
    Map<String, List<Located<String>>> lists) {
  public PhraseSource {
    messages = Collections.unmodifiableMap(new LinkedHashMap<>(messages));
    lists = Collections.unmodifiableMap(new LinkedHashMap<>(lists));
  }

  /** The messages without their places. */
  public SortedMap<String, String> patterns() {
    SortedMap<String, String> patterns = new TreeMap<>();
    messages.forEach((id, text) -> patterns.put(id, text.value()));
    return patterns;
  }

  /** The message with this id. */
  public Optional<Located<String>> message(String id) {
    return Optional.ofNullable(messages.get(id));
  }

  /** The words of a list, none if there is no such list. */
  public List<Located<String>> list(String id) {
    return lists.getOrDefault(id, List.of());
  }
}
