package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.language.PhraseProblem;
import goniograph.language.Phrases;
import goniograph.language.PluralForms;
import goniograph.library.PhraseSource;
import goniograph.matter.Located;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A phrase that cannot be filled, or that lacks a plural form of its language. */
public final class PhraseFaulty implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "phrase-faulty",
          "A phrase is no ICU message, or its plural lacks a form that numbers on a sheet reach in"
              + " that language: `one` and `other` in English, all six in Arabic.",
          "The dose sentence would be missing, or wrong for just the number the patient has.",
          "Unicode CLDR, language plural rules",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.PHRASES,
              "sets: \"{n, plural, one {# round} other {# rounds}}\"",
              "sets: «\"{n, plural, other {# rounds}}\"»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    return checked.library().phrases().values().stream()
        .flatMap(
            source ->
                checked
                    .library()
                    .language(source.language())
                    .map(language -> Phrases.of(language, source.patterns()))
                    .map(phrases -> findings(source, phrases))
                    .orElseGet(Stream::empty)
                    .map(finding -> finding.withLanguage(source.language())));
  }

  private Stream<Finding> findings(PhraseSource source, Phrases phrases) {
    Map<String, List<PhraseProblem>> byPhrase =
        phrases.problems().stream()
            .collect(
                Collectors.groupingBy(PhraseProblem::id, LinkedHashMap::new, Collectors.toList()));
    return byPhrase.entrySet().stream()
        .flatMap(
            entry ->
                source
                    .message(entry.getKey())
                    .map(text -> finding(entry.getKey(), text, entry.getValue(), phrases))
                    .stream());
  }

  private Finding finding(
      String id, Located<String> text, List<PhraseProblem> problems, Phrases phrases) {
    String what =
        problems.stream().map(PhraseFaulty::what).distinct().collect(Collectors.joining(" "));
    List<String> forms = PluralForms.of(phrases.language()).required().stream().sorted().toList();
    boolean plural =
        problems.stream().anyMatch(one -> one.kind() == PhraseProblem.Kind.PLURAL_FORM_MISSING);
    return error(
        text.at(),
        "Phrase `" + id + "`: " + what,
        plural
            ? "Write every form of this language: " + String.join(", ", forms) + "."
            : "Write a message such as `{n, plural, one {# time} other {# times}}`.");
  }

  private static String what(PhraseProblem problem) {
    return switch (problem.kind()) {
      case PLURAL_FORM_MISSING -> "the plural form `" + problem.detail() + "` is missing.";
      case ARGUMENT_KIND -> "`{" + problem.detail() + "}` is of a kind that no sheet fills in.";
      default -> "it is no message: " + firstLine(problem.detail()) + ".";
    };
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("").replaceAll("\\.$", "");
  }
}
