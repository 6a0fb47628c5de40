package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.language.Language;
import goniograph.language.Sentence;
import goniograph.library.Version;
import goniograph.matter.Body;
import goniograph.matter.Piece;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One sentence of a text and where it stands.
 *
 * @param section the key of its section; "" for the title
 * @param sentence its place in the piece
 */
record Said(Version version, String section, Piece piece, Sentence sentence) {
  static final String TITLE = "";

  private static final Pattern CLAIM = Pattern.compile("\\[[a-z0-9-]+\\]\\s*$");

  /** All sentences of a text, in order. */
  static List<Said> all(Version version, Checked checked) {
    Language language = checked.language(version.language());
    List<Said> all = new ArrayList<>();
    version.body().title().ifPresent(title -> add(version, TITLE, title, language, all));
    for (Body.Section section : version.body().sections()) {
      section.pieces().forEach(piece -> add(version, section.key().value(), piece, language, all));
    }
    return all;
  }

  private static void add(
      Version version, String section, Piece piece, Language language, List<Said> into) {
    Sentence.of(language, piece.text())
        .forEach(sentence -> into.add(new Said(version, section, piece, sentence)));
  }

  /** Its words as typed. */
  String text() {
    return sentence.in(piece.text());
  }

  /** Whether it stands in one of these sections. */
  boolean in(String... sections) {
    return List.of(sections).contains(section);
  }

  /** Whether it ends with the mark of a claim. */
  boolean marked() {
    return CLAIM.matcher(text()).find();
  }

  /** The place of a part of it. */
  Span at(int from, int to) {
    return Places.within(version.file(), piece, sentence.from() + from, sentence.from() + to);
  }

  /** The place of the whole sentence. */
  Span at() {
    return at(0, text().length());
  }
}
