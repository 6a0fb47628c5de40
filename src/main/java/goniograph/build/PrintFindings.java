package goniograph.build;

import goniograph.finding.Finding;
import goniograph.language.PhraseProblem;
import goniograph.library.Version;
import goniograph.matter.Body;
import goniograph.render.Block;
import goniograph.render.Overflow;
import goniograph.render.Paper;
import goniograph.source.Span;
import goniograph.type.MissingGlyph;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What goes wrong while a sheet is made, as findings about its text. */
record PrintFindings(Job job) {

  /** What the page could not hold or show. */
  List<Finding> of(Paper paper) {
    List<Finding> findings = new ArrayList<>();
    paper.overflows().forEach(overflow -> findings.add(about(overflow(overflow))));
    if (!paper.missing().isEmpty()) {
      findings.add(about(missing(paper.missing())));
    }
    return findings;
  }

  /** Phrases that the sheet needs and cannot have. */
  List<Finding> of(List<PhraseProblem> gaps) {
    return gaps.stream().map(this::gap).map(this::about).toList();
  }

  private Finding about(Finding finding) {
    return finding.withEntry(job.entry().id()).withLanguage(job.language());
  }

  private Finding overflow(Overflow overflow) {
    String lines = overflow.lines() == 1 ? "1 line" : overflow.lines() + " lines";
    String first =
        overflow.firstLine().isEmpty()
            ? "."
            : "; the first that does not fit is “" + overflow.firstLine() + "”.";
    return Finding.error(
        "page-overflow",
        at(overflow.block()),
        "The block `"
            + overflow.block().word()
            + "` is "
            + lines
            + " too long for `"
            + job.layout().name()
            + "` on "
            + job.paper()
            + first,
        "What does not fit would run into the block below; type is never made smaller.",
        mend(overflow.block()));
  }

  private static String mend(Block block) {
    return switch (block) {
      case STEPS -> "Write `## why` and `## do` shorter, or make two entries of it.";
      case STOP_BOX -> "List fewer statements, or have their wording shortened and signed.";
      case BACK -> "Write the sections behind `## do` shorter, or make two entries of it.";
      case LADDER -> "Take a step out of `ladder`, or make two entries of it.";
      case DIARY -> "Write the phrases of the diary in this language shorter.";
    };
  }

  /** The heading where shortening begins; else the text. */
  private Span at(Block block) {
    String section = block == Block.BACK ? "feel" : "do";
    boolean named = block == Block.BACK || block == Block.STEPS;
    return job.entry()
        .version(job.language())
        .map(Version::body)
        .filter(body -> named)
        .flatMap(body -> body.section(section))
        .map(Body.Section::key)
        .map(key -> key.at())
        .orElseGet(this::text);
  }

  private Span text() {
    return job.entry()
        .version(job.language())
        .map(version -> version.body().at())
        .orElseGet(() -> Span.of(job.entry().common().file().path()));
  }

  private Finding missing(List<MissingGlyph> glyphs) {
    String named = glyphs.stream().map(MissingGlyph::words).collect(Collectors.joining(", "));
    return Finding.error(
        "glyph-missing",
        text(),
        "No font shows " + named + ".",
        "It would print as an empty box, and the word is lost.",
        "Write another character; in a language with its own script, add its font.");
  }

  private Finding gap(PhraseProblem problem) {
    String file = "shared/phrases/" + job.language() + ".yaml";
    return Finding.error(
        "phrase-missing",
        Span.of(file),
        "The sheet needs the phrase `" + problem.id() + "`: " + wrong(problem),
        "A sheet with a gap in its words is not printed, and languages are never mixed.",
        "Add or mend `" + problem.id() + "` in `" + file + "`.");
  }

  private static String wrong(PhraseProblem problem) {
    return switch (problem.kind()) {
      case ID_MISSING -> "there is none.";
      case SYNTAX -> "it is no message.";
      case PLURAL_FORM_MISSING -> "the plural form `" + problem.detail() + "` is missing.";
      case ARGUMENT_KIND -> "`{" + problem.detail() + "}` is of a kind that no sheet fills in.";
      case ARGUMENT_MISSING -> "nothing on this sheet fills in `{" + problem.detail() + "}`.";
      case ARGUMENT_NOT_A_NUMBER -> "`{" + problem.detail() + "}` is no number on this sheet.";
    };
  }
}
