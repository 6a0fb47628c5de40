package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.language.PersonFinder;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.matter.Located;
import goniograph.matter.Slots;
import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.stream.Stream;

/** Data of a person in a file of the library. */
public final class PersonalData implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "personal-data",
          "A text, a comment in it, a statement or a pose file holds a name with a title, a date of"
              + " birth, a telephone number, an e-mail address or a number that may be someone's."
              + " The finding names the place and the kind and never repeats the words. The clinic's"
              + " own telephone numbers stand in the clinic file, which is not looked at.",
          "A sheet goes to many people, and copies of the library to more.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "A little out of breath is fine.",
              "As shown to «Mrs Sample»."),
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "A little out of breath is fine.",
              "Write to «desk@clinic.example»."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    Library library = checked.library();
    Stream<Finding> texts = checked.entries().flatMap(entry -> inEntry(entry, checked));
    Stream<Finding> poses =
        library.figures().values().stream()
            .flatMap(file -> inFile(file, Library.SOURCE_LANGUAGE, checked));
    return Stream.of(texts, poses, inStatements(checked)).flatMap(all -> all);
  }

  private Stream<Finding> inEntry(Entry entry, Checked checked) {
    return entry.languages().stream()
        .flatMap(language -> entry.version(language).stream())
        .flatMap(
            version ->
                inFile(version.file(), version.language(), checked)
                    .map(f -> f.withEntry(entry.id()).withLanguage(version.language())));
  }

  private Stream<Finding> inFile(SourceFile file, String language, Checked checked) {
    return finder(language, checked).find(file.text()).stream()
        .map(found -> finding(file.span(found.from(), found.to()), found.kind()));
  }

  private Stream<Finding> inStatements(Checked checked) {
    return checked.library().statements().stream()
        .flatMap(statement -> statement.texts().entrySet().stream())
        .flatMap(
            text ->
                inText(text.getValue(), text.getKey(), checked)
                    .map(finding -> finding.withLanguage(text.getKey())));
  }

  private Stream<Finding> inText(Located<String> text, String language, Checked checked) {
    return finder(language, checked).find(text.value()).stream()
        .map(found -> finding(Slots.part(text, found.from(), found.to()), found.kind()));
  }

  private static PersonFinder finder(String language, Checked checked) {
    return PersonFinder.of(checked.words(language));
  }

  private Finding finding(Span at, PersonFinder.Kind kind) {
    return error(
        at,
        "Here stands " + kind.words() + ".",
        "Take it out. The clinic's telephone numbers are slots, `{clinic.phone}`, in statements.");
  }
}
