package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.library.Library;
import goniograph.library.PhraseSource;
import goniograph.source.Span;
import java.util.List;
import java.util.stream.Stream;

/** Phrases that another language of the clinic lacks. */
public final class PhraseMissing implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "phrase-missing",
          "A language of the clinic lacks phrases that the source language has, or has phrases that"
              + " the source language does not know. One finding names them all.",
          "A sheet in that language is not made while a phrase it needs is missing; languages are"
              + " never mixed.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.PHRASES_ARABIC, "  why: لماذا\n", "  why: لماذا\n  whyy: «لماذا»\n"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    Library library = checked.library();
    return library.phrases(Library.SOURCE_LANGUAGE).stream()
        .flatMap(
            source ->
                library.languages().stream()
                    .filter(language -> !language.equals(Library.SOURCE_LANGUAGE))
                    .flatMap(language -> compare(source, language, library)));
  }

  private Stream<Finding> compare(PhraseSource source, String language, Library library) {
    String file = "shared/phrases/" + language + ".yaml";
    List<String> there =
        library
            .phrases(language)
            .map(phrases -> List.copyOf(phrases.messages().keySet()))
            .orElse(List.of());
    List<String> missing =
        source.messages().keySet().stream().filter(id -> !there.contains(id)).toList();
    Stream<Finding> lacking =
        missing.isEmpty()
            ? Stream.empty()
            : Stream.of(
                error(
                    Span.of(file),
                    missing.size()
                        + (missing.size() == 1 ? " phrase is missing: " : " phrases are missing: ")
                        + Words.listed(missing)
                        + ".",
                    "Add what is missing to `" + file + "` in that language."));
    Stream<Finding> invented =
        library.phrases(language).stream()
            .flatMap(phrases -> phrases.messages().entrySet().stream())
            .filter(entry -> source.message(entry.getKey()).isEmpty())
            .map(
                entry ->
                    error(
                        entry.getValue().at(),
                        References.what("phrase", entry.getKey(), source.messages().keySet()),
                        References.mend(
                            entry.getKey(), source.messages().keySet(), "take the line out")));
    return Stream.concat(lacking, invented).map(finding -> finding.withLanguage(language));
  }
}
