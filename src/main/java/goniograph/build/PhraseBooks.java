package goniograph.build;

import goniograph.language.Language;
import goniograph.language.Phrases;
import goniograph.library.Library;
import goniograph.library.PhraseSource;
import goniograph.matter.Located;
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
                language(library, tag)
                    .ifPresent(language -> books.put(tag, Phrases.of(language, messages(source)))));
    return new PhraseBooks(books);
  }

  /** The phrases of a language. */
  public Optional<Phrases> in(String language) {
    return Optional.ofNullable(books.get(language));
  }

  private static Optional<Language> language(Library library, String tag) {
    Optional<String> digits =
        library.clinic().map(clinic -> clinic.digits().get(tag)).map(Located::value);
    return Language.of(tag).map(language -> digits.flatMap(language::withDigits).orElse(language));
  }

  private static SortedMap<String, String> messages(PhraseSource source) {
    SortedMap<String, String> messages = new TreeMap<>();
    source.messages().forEach((id, text) -> messages.put(id, text.value()));
    return messages;
  }
}
