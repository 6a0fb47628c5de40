package goniograph.check;

import goniograph.language.Cues;
import goniograph.language.WordFinder;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.library.Version;
import goniograph.matter.Piece;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the texts of an entry tell the patient to do, in every language that has cues.
 *
 * @param versions the texts, the source language first where it has one
 */
record Texts(List<Version> versions) {
  private static final List<String> SECTIONS = List.of("do", "easier", "harder", "know");

  Texts {
    versions = List.copyOf(versions);
  }

  static Texts of(Entry entry) {
    return new Texts(
        entry.languages().stream()
            .sorted((a, b) -> Boolean.compare(source(b), source(a)))
            .flatMap(language -> entry.version(language).stream())
            .toList());
  }

  private static boolean source(String language) {
    return language.equals(Library.SOURCE_LANGUAGE);
  }

  /** The first place that gives this cue. */
  Optional<Reason> cue(String name) {
    return versions.stream().flatMap(version -> cue(name, version)).findFirst();
  }

  private static Stream<Reason> cue(String name, Version version) {
    Cues cues = Cues.of(version.language());
    return SECTIONS.stream()
        .flatMap(
            section ->
                version.body().pieces(section).stream()
                    .flatMap(piece -> cue(name, section, piece, version, cues).stream()));
  }

  private static Optional<Reason> cue(
      String name, String section, Piece piece, Version version, Cues cues) {
    return cues.find(name, piece.text()).map(found -> reason(found, section, piece, version));
  }

  private static Reason reason(
      WordFinder.Found found, String section, Piece piece, Version version) {
    String said = piece.text().substring(found.from(), found.to());
    String where =
        version.language().equals(Library.SOURCE_LANGUAGE)
            ? ""
            : " of " + version.language() + ".md";
    return Reason.at("`" + said + "` in `" + section + "`" + where, piece.at());
  }
}
