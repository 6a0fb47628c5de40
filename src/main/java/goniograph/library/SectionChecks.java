package goniograph.library;

import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.matter.Body;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Holds the sections of a text against those its kind knows. */
record SectionChecks(Kind kind, Consumer<Finding> findings) {
  private static final String PLACE = "The sheet has a place for it that the patient looks for.";

  /** Unknown sections, in any language. */
  void known(Body body) {
    List<String> known = new ArrayList<>(kind.requiredSections());
    known.addAll(kind.optionalSections());
    for (Body.Section section : body.sections()) {
      if (!known.contains(section.key().value())) {
        unknown(section, known);
      }
    }
  }

  private void unknown(Body.Section section, List<String> known) {
    String key = section.key().value();
    String hint = Nearest.hint(key, known);
    findings.accept(
        Finding.error(
            "section-unknown",
            section.key().at(),
            "`## " + key + "` is not a section of this kind" + (hint.isEmpty() ? "." : hint),
            "Headings are the same English keys in every language; the sheet prints its own words.",
            "Write one of `" + String.join("`, `", known) + "`."));
  }

  /** Sections the source text lacks or leaves empty. */
  void complete(Body body, boolean ladder) {
    List<String> wanted = new ArrayList<>(kind.requiredSections());
    if (kind == Kind.EXERCISE && !ladder) {
      wanted.add("harder");
    }
    List<String> missing =
        wanted.stream().filter(key -> body.section(key).isEmpty()).map(key -> "## " + key).toList();
    if (!missing.isEmpty()) {
      missing(body, missing);
    }
    body.sections().stream().filter(section -> section.pieces().isEmpty()).forEach(this::empty);
  }

  private void missing(Body body, List<String> missing) {
    String names = "`" + String.join("`, `", missing) + "`";
    findings.accept(
        Finding.error(
            "section-missing",
            Optional.of(body).flatMap(Body::title).map(title -> title.at()).orElse(start(body)),
            "The text lacks " + names + ".",
            PLACE,
            "Add " + names + " with your own words."));
  }

  private static Span start(Body body) {
    Span at = body.at();
    return new Span(
        at.file(), at.start(), at.start(), at.line(), at.column(), at.line(), at.column());
  }

  private void empty(Body.Section section) {
    String purpose = FieldGuide.purpose("text." + section.key().value());
    findings.accept(
        Finding.error(
            "section-empty",
            section.key().at(),
            "`## " + section.key().value() + "` has no text.",
            purpose.isEmpty() ? PLACE : purpose,
            "Write its text below the heading, or take the heading out."));
  }
}
