package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading the library folder and the clinic file finds. */
final class LibraryPages {
  private static final String CLINIC = "shared/clinic.yaml";

  private static final String PROGRAMME =
      """
      ---
      schema: programme/1
      id: pr-steady
      kind: programme
      phases:
        - { weeks: 1..2, add: [hp-chair-rise] }
      review_due: 2027-05-31
      ---
      # Steady
      """;

  private LibraryPages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "file-not-utf-8",
            "A file is not UTF-8 text: a character of it was lost.",
            "Letters of other languages would be printed wrongly.",
            Example.in(ExampleFiles.CHAIR_RISE, "Stand tall.", "Stand t«\uFFFD»ll.")),
        page(
            "file-unknown",
            "A file in the folder of an entry that an entry does not have.",
            "It is not read, whatever it says.",
            Example.in(
                "content/exercises/hp-chair-rise/notes.txt", "", "«»Ask about the seat height.\n")),
        page(
            "library-file-missing",
            "A file that every library needs is not there.",
            "Every sheet takes its wording or its telephone numbers from it.",
            Example.in(CLINIC, "", "«»").alongside(CLINIC, Example.Edit.WHOLE, "")),
        page(
            "entry-source-missing",
            "The folder of an entry has no file of the source language.",
            "Dose and safety stand there; without it there is no sheet.",
            Example.in("content/exercises/kn-bend/en.md", "", "«»")
                .alongside("content/exercises/kn-bend/ar.md", "", "# ثني الركبة\n")),
        page(
            "programme-weeks",
            "The weeks of a phase are not two numbers with two dots between, the first not greater.",
            "Nobody could tell when the phase ends.",
            Example.in(
                    "content/programmes/pr-steady/en.md",
                    PROGRAMME,
                    PROGRAMME.replace("1..2", "«2..1»"))
                .insteadOf("")),
        page(
            "clinic-phone",
            "A telephone number that is not digits and spaces, with + in front where it is"
                + " international.",
            "In an emergency nobody can guess what was meant.",
            Example.in(CLINIC, "out_of_hours: \"+00 0000 0199\"", "out_of_hours: «\"call desk\"»")),
        page(
            "clinic-hours",
            "Opening hours that are not two times of day with two dots between.",
            "A patient who calls in vain may not call again.",
            Example.in(CLINIC, "mon-fri: \"08:00..17:00\"", "mon-fri: «\"8 to 5\"»")),
        page(
            "clinic-language",
            "A language that is not named by its tag.",
            "No sheet can be made in it.",
            Example.in(CLINIC, "\nlanguages: [en, ar]", "\nlanguages: [en, «arabic!»]")),
        page(
            "clinic-time-zone",
            "A time zone that is not one of the time zone database.",
            "It decides which day is today, and so what is overdue.",
            Example.in(CLINIC, "time_zone: Etc/UTC", "time_zone: «Quillhaven»")));
  }

  private static RulePage page(String name, String what, String why, Example example) {
    return RulePage.of(name, what, why, RulePage.HOUSE, Acceptance.NOBODY, example);
  }
}
