package goniograph.build;

import goniograph.finding.Finding;
import goniograph.language.PhraseProblem;
import goniograph.render.Overflow;
import goniograph.render.Paper;
import goniograph.source.Span;
import goniograph.type.MissingGlyph;
import java.util.ArrayList;
import java.util.List;

/** What goes wrong while a sheet is made, as findings about its text. */
record PrintFindings(Job job) {

  /** What the page could not hold or show. */
  List<Finding> of(Paper paper) {
    List<Finding> findings = new ArrayList<>();
    paper.overflows().forEach(overflow -> findings.add(about(overflow(overflow))));
    paper.missing().forEach(glyph -> findings.add(about(missing(glyph))));
    return findings;
  }

  /** Phrases that the sheet needs and cannot have. */
  List<Finding> of(List<PhraseProblem> gaps) {
    return gaps.stream().map(this::gap).map(this::about).toList();
  }

  private Finding about(Finding finding) {
    return finding.withEntry(job.entry().id()).withLanguage(job.language());
  }

  private Span text() {
    return job.entry()
        .version(job.language())
        .map(version -> version.body().at())
        .orElseGet(() -> Span.of(job.entry().common().file().path()));
  }

  private Finding overflow(Overflow overflow) {
    String first =
        overflow.firstLine().isEmpty()
            ? ""
            : " The first line that does not fit is “" + overflow.firstLine() + "”.";
    return Finding.error(
        "page-overflow",
        text(),
        "The block “"
            + overflow.block()
            + "” is "
            + overflow.lines()
            + (overflow.lines() == 1 ? " line" : " lines")
            + " too long for the "
            + job.layout().name()
            + " layout on "
            + job.paper()
            + "."
            + first,
        "What does not fit would be cut off or pushed over the stop box; type is never made smaller.",
        "Write shorter, or split the entry. A statement's words belong to all sheets: of statements,"
            + " leave out those that no rule asks for.");
  }

  private Finding missing(MissingGlyph glyph) {
    return Finding.error(
        "glyph-missing",
        text(),
        "No font shows the character "
            + glyph.character()
            + " ("
            + glyph.code()
            + ", "
            + glyph.name()
            + ").",
        "It would be left out on paper.",
        "Use another character.");
  }

  private Finding gap(PhraseProblem problem) {
    return Finding.error(
        "phrase-missing",
        Span.of("shared/phrases/" + job.language() + ".yaml"),
        "The sheet needs the phrase “"
            + problem.id()
            + "”, which is missing or cannot be filled in ("
            + problem.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
            + ").",
        "A sheet with a gap in its words is not printed.",
        "Add or mend the phrase in shared/phrases/" + job.language() + ".yaml.");
  }
}
