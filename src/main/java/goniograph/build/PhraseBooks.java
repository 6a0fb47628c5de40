package goniograph.build;

import goniograph.language.Phrases;
import goniograph.library.Library;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The compiled phrases of every language that a library has, with the clinic's digit sets. */
public final class PhraseBooks {
  private final SortedMap<String, Phrases> books;

  private PhraseBooks(SortedMap<String, Phrases> books) {
    this.books = Collections.unmodifiableSortedMap(books);
  }

  /** The phrases of a library. */
  public static PhraseBooks of(Library library) {
    SortedMap<String, Phrases> books = new TreeMap<>();
    library
        .phrases()
        .forEach(
            (tag, source) ->
                library
                    .language(tag)
                    .ifPresent(
                        language -> books.put(tag, Phrases.of(language, source.patterns()))));
    return new PhraseBooks(books);
  }

  /** The phrases of a language. */
  public Optional<Phrases> in(String language) {
    return Optional.ofNullable(books.get(language));
  }
}
