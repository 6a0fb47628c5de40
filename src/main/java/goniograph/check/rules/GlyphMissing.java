package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.PhraseSource;
import goniograph.library.Statement;
import goniograph.library.Version;
import goniograph.matter.Inline;
import goniograph.matter.Located;
import goniograph.matter.Piece;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.Fonts;
import goniograph.type.MissingGlyph;
import goniograph.type.Weight;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A character that no font of the sheet can draw. */
public final class GlyphMissing implements Rule {
  private static final FaceOrder FACES = FaceOrder.of(Family.LATIN, Weight.REGULAR, "en");

  private static final RulePage PAGE =
      RulePage.of(
          "glyph-missing",
          "A text, statement or phrase has a character that none of the sheet's fonts shows.",
          "It would print as an empty box, and the word is lost.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "3. Stand tall", "3. «Stand tall 立»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    Stream<Finding> texts =
        checked.entries().flatMap(entry -> texts(entry).map(f -> f.withEntry(entry.id())));
    Stream<Finding> statements = checked.library().statements().stream().flatMap(this::statement);
    Stream<Finding> phrases = checked.library().phrases().values().stream().flatMap(this::phrases);
    return Stream.of(texts, statements, phrases).flatMap(all -> all);
  }

  private Stream<Finding> texts(Entry entry) {
    return entry.languages().stream()
        .flatMap(language -> entry.version(language).stream())
        .flatMap(this::text);
  }

  private Stream<Finding> text(Version version) {
    return version.body().pieces().stream()
        .map(piece -> new Located<>(words(piece), piece.at()))
        .flatMap(this::missing)
        .map(finding -> finding.withLanguage(version.language()));
  }

  private static String words(Piece piece) {
    return piece.parts().stream()
        .filter(Inline.Words.class::isInstance)
        .map(part -> ((Inline.Words) part).text())
        .collect(Collectors.joining());
  }

  private Stream<Finding> statement(Statement statement) {
    return statement.texts().entrySet().stream()
        .flatMap(text -> missing(text.getValue()).map(f -> f.withLanguage(text.getKey())));
  }

  private Stream<Finding> phrases(PhraseSource source) {
    return source.messages().values().stream()
        .flatMap(this::missing)
        .map(finding -> finding.withLanguage(source.language()));
  }

  private Stream<Finding> missing(Located<String> text) {
    List<MissingGlyph> missing = Fonts.missing(text.value(), FACES);
    String named = missing.stream().map(MissingGlyph::words).collect(Collectors.joining(", "));
    return missing.isEmpty()
        ? Stream.empty()
        : Stream.of(
            error(
                text.at(),
                "No font shows " + named + ".",
                "Write another character; in a language with its own script, add its font."));
  }
}
