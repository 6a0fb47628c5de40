package goniograph.library;

import goniograph.matter.Body;
import goniograph.matter.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** An exercise, an advice topic or a programme. */
public sealed interface Entry permits Exercise, Advice, Programme {

  /** What every kind has. */
  Common common();

  /** Its id. */
  default String id() {
    return common().id().value();
  }

  /** Its text in the source language. */
  default Body text() {
    return version(Library.SOURCE_LANGUAGE)
        .map(Version::body)
        .orElseThrow(() -> new IllegalStateException("an entry has its source text"));
  }

  /** Its version in a language. */
  default Optional<Version> version(String language) {
    return Optional.ofNullable(common().versions().get(language));
  }

  /** The languages it has versions in, the source language among them, sorted by tag. */
  default List<String> languages() {
    return List.copyOf(common().versions().keySet());
  }

  /** The statements it lists. */
  default List<Located<String>> statements() {
    return common().statements();
  }

  /** The day by which it must be reviewed. */
  default Optional<Located<LocalDate>> reviewDue() {
    return common().reviewDue();
  }
}
