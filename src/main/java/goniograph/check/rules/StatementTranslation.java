package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.library.Library;
import goniograph.library.Statement;
import goniograph.matter.Inline;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.List;
import java.util.stream.Stream;

/** Statements that another language lacks, or words with other slots. */
public final class StatementTranslation implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "statement-translation",
          "A language of the clinic has no wording for a statement, or its wording has other slots"
              + " than the source language's.",
          "A safety sentence would be missing, or lose its telephone number or pain limit.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.STATEMENTS_ARABIC,
              "s-pain-ease:    { text: \"ألم حتى {pain.during_max} من 10: تابع.",
              "s-pain-ease:    { text: «\"ألم حتى 3 من 10: تابع."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    Library library = checked.library();
    return library.languages().stream()
        .filter(language -> !language.equals(Library.SOURCE_LANGUAGE))
        .flatMap(
            language ->
                Stream.concat(
                        misspelt(checked, language) ? Stream.empty() : missing(library, language),
                        slots(library, language))
                    .map(finding -> finding.withLanguage(language)));
  }

  /** A statement under a misspelt id seems to be missing too. */
  private static boolean misspelt(Checked checked, String language) {
    return checked.findings().stream()
        .filter(finding -> finding.rule().equals("statement-unknown"))
        .anyMatch(finding -> finding.language().equals(language));
  }

  private Stream<Finding> missing(Library library, String language) {
    List<String> missing =
        library.statements().stream()
            .filter(statement -> statement.text(language).isEmpty())
            .map(statement -> statement.id().value())
            .toList();
    return missing.isEmpty()
        ? Stream.empty()
        : Stream.of(
            error(
                Span.of("shared/statements/" + language + ".yaml"),
                "There is no wording for " + Words.listed(missing) + ".",
                "Add the statements in that language and have them signed."));
  }

  private Stream<Finding> slots(Library library, String language) {
    return library.statements().stream()
        .flatMap(
            statement ->
                statement.text(language).stream()
                    .flatMap(text -> slots(statement, language, text)));
  }

  private Stream<Finding> slots(Statement statement, String language, Located<String> text) {
    List<String> source = names(statement.slots(Library.SOURCE_LANGUAGE));
    List<String> here = names(statement.slots(language));
    return source.equals(here)
        ? Stream.empty()
        : Stream.of(
            error(
                text.at(),
                "`"
                    + statement.id().value()
                    + "` has the slots "
                    + listed(here)
                    + ", its source "
                    + listed(source)
                    + ".",
                "Write each slot of the source once, where the sentence needs it."));
  }

  private static List<String> names(List<Inline.Slot> slots) {
    return slots.stream().map(Inline.Slot::name).sorted().toList();
  }

  private static String listed(List<String> names) {
    return names.isEmpty() ? "none" : "`{" + String.join("}`, `{", names) + "}`";
  }
}
