package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.TagRule;
import goniograph.library.Vocabulary.Region;
import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A tag that the clinic's table does not have. */
public final class TagUnknown implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "tag-unknown",
          "`precautions` names a tag for which the clinic's table has no rule: an error where a known"
              + " tag is near, and otherwise a note, for the entry may know more than the table.",
          "A misspelt tag is never marked, and the precaution is never applied.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.BAND, "{ tag: latex-allergy,", "{ tag: «latex-alergy»,"),
          Example.in(
              ExampleFiles.BAND,
              "{ tag: recent-surgery-shoulder,",
              "{ tag: «recent-surgery-sholder»,"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    Library library = checked.library();
    return exercise.precautions().stream()
        .map(own -> own.tag())
        .filter(tag -> library.tagRules(tag.value()).isEmpty() && !library.tagRules().isEmpty())
        .map(tag -> finding(tag, known(library)));
  }

  private Finding finding(Located<String> tag, List<String> known) {
    Optional<String> near = Nearest.of(tag.value(), known);
    return near.isPresent()
        ? error(
            tag.at(),
            References.what("rule for the tag", tag.value(), known),
            "Write `" + near.get() + "`, or add a row for the tag to the clinic's table.")
        : note(
            tag.at(),
            "The clinic's table has no rule for the tag `" + tag.value() + "`.",
            "Nothing, if this entry alone acts on it; else add a row to the table.");
  }

  private static List<String> known(Library library) {
    return library.tagRules().stream()
        .map(row -> row.tag().value())
        .flatMap(
            tag ->
                tag.endsWith(TagRule.EACH_REGION)
                    ? Region.WORDS.stream().map(word -> tag.replace(TagRule.EACH_REGION, word))
                    : Stream.of(tag))
        .distinct()
        .toList();
  }
}
