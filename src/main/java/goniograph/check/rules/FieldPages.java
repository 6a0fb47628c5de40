package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading the fields of a file finds, whatever the file. */
final class FieldPages {
  private FieldPages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "field-unknown",
            "A key that is not known here; the nearest known one is offered.",
            "A key that is not known would be ignored without a word.",
            Example.in(HEEL_TO_TOE, "surface: firm", "«suface»: firm")),
        page(
            "field-missing",
            "A map lacks keys that it must have; one finding names them all.",
            "Nothing is assumed in the place of what is not written.",
            Example.in(CHAIR_RISE, "---\nschema: entry/1\nid:", "---\n«schema: entry/1\nid:")
                .alongside(CHAIR_RISE, "review_due: 2027-05-31\n", "")),
        page(
            "field-empty",
            "A key has nothing behind its colon.",
            "An empty field cannot be told from a forgotten one.",
            Example.in(CHAIR_RISE, "aim: strength", "aim:«»")),
        page(
            "field-kind",
            "A list stands where one value is wanted, or the other way round.",
            "What cannot be read exactly could reach the patient as something else.",
            Example.in(CHAIR_RISE, "region: [hip]", "region: «hip»")),
        page(
            "field-word",
            "A word that is not one of the closed list of its field.",
            "Rules and drawings know only the words of the list.",
            Example.in(HEEL_TO_TOE, "stance: tandem", "stance: «tandm»")),
        page(
            "field-id",
            "An id that holds anything but lower-case letters, digits and single hyphens.",
            "Ids name files and stand in reports; one spelling keeps them findable.",
            Example.in(CHAIR_RISE, "figure: hp-chair-rise", "figure: «HP chair rise»")),
        page(
            "field-integer",
            "A whole number is wanted: digits alone, within the limits that make sense.",
            "`010` is read as 8 by some programs and as 10 by others.",
            Example.in(HEEL_TO_TOE, "  start: 1\n", "  start: «01»\n")),
        page(
            "field-date",
            "A date that is not written as year, month and day, or that is no day of the calendar.",
            "03/04 is a day in March in one country and in April in another.",
            Example.in(CHAIR_RISE, "review_due: 2027-05-31", "review_due: «31.5.2027»")));
  }

  private static RulePage page(String name, String what, String why, Example example) {
    return RulePage.of(name, what, why, RulePage.HOUSE, Acceptance.NOBODY, example);
  }
}
