package goniograph.library;

import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Inline;
import goniograph.matter.Located;
import goniograph.matter.Slots;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A safety or standard sentence: one wording per language.
 *
 * @param id its id and where it stands in the source language's file
 * @param urgency how urgent it is
 * @param texts its wording by language tag
 */
public record Statement(
    Located<String> id, Located<Urgency> urgency, SortedMap<String, Located<String>> texts) {
  public Statement {
    texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
  }

  /** The same with its wording in one more language. */
  Statement with(String language, Located<String> wording) {
    SortedMap<String, Located<String>> more = new TreeMap<>(texts);
    more.put(language, wording);
    return new Statement(id, urgency, more);
  }

  /** Its wording in a language. */
  public Optional<Located<String>> text(String language) {
    return Optional.ofNullable(texts.get(language));
  }

  /** The slots of its wording in a language. */
  public List<Inline.Slot> slots(String language) {
    return text(language).map(Slots::in).orElse(List.of());
  }
}
