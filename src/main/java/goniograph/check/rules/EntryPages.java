package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE_ARABIC;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading the folder of an entry finds. */
final class EntryPages {
  private static final String ADVICE_MATTER =
      """
      ---
      schema: entry/1
      id: ad-how-much-pain
      kind: advice
      pain: { during_max: 3 }
      statements: [s-chest, s-spread, s-worse, s-pain-ease, s-morning]
      evidence:
        - { claim: next-morning-test, kind: trial, ref: silbernagel-2007, looked_at: 2026-03-18, certainty: low }
      review_due: 2027-03-31
      ---
      """;

  private EntryPages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "front-matter-missing",
            "The source-language file of an entry does not begin with front matter.",
            "Dose and safety stand there; without them there is no sheet.",
            Example.in(ExampleFiles.ADVICE, ADVICE_MATTER, "«»")),
        page(
            "version-front-matter",
            "A language version has front matter.",
            "Dose and safety have one home: the source language's file.",
            Example.in(
                CHAIR_RISE_ARABIC,
                "# النهوض عن الكرسي\n",
                "«---»\nlanguage: ar\n---\n# النهوض عن الكرسي\n")),
        page(
            "entry-folder",
            "The `id` of an entry is not the name of its folder.",
            "One thing with two names is looked up under the wrong one.",
            Example.in(CHAIR_RISE, "id: hp-chair-rise\n", "id: «hp-chair-raise»\n")),
        page(
            "section-missing",
            "A text lacks a section that a sheet has a place for: `why`, `do`, `feel`, `easier`,"
                + " `landmark`, and `harder` where there is no ladder.",
            "The patient looks for it.",
            Example.in(CHAIR_RISE, "# Chair rise\n", "# «Chair rise»\n")
                .alongside(CHAIR_RISE, "## landmark\nnose over your toes\n", "")),
        page(
            "section-unknown",
            "A section whose key is not known; the nearest one is offered.",
            "Headings are the same English keys in every language; the sheet prints its own words.",
            Example.in(CHAIR_RISE_ARABIC, "## feel", "## «feal»")),
        page(
            "section-empty",
            "A section without text.",
            "The sheet has a place for it that the patient looks for.",
            Example.in(CHAIR_RISE, "## landmark\nnose over your toes\n", "## «landmark»\n")),
        page(
            "lies-on-missing",
            "A lying or kneeling body, and nothing says what carries it.",
            "From the floor one must get up again; from a bed that is easier.",
            Example.in(CHAIR_RISE, "position: sitting\n", "position: «lying-on-back»\n")),
        page(
            "ladder-order",
            "The steps of a ladder are not numbered 1, 2, 3 …, or it starts on a step that is not"
                + " there.",
            "Patient and therapist count the steps from the bottom.",
            Example.in(HEEL_TO_TOE, "  start: 1\n", "  start: «7»\n")),
        page(
            "ladder-field-twice",
            "A field stands in `dose` and again in a step of the ladder.",
            "One number has one home; of two, one is forgotten at the next change.",
            Example.in(
                HEEL_TO_TOE, "    - { n: 1, hold: 20 s,", "    - { n: 1, reps: «3», hold: 20 s,")));
  }

  private static RulePage page(String name, String what, String why, Example example) {
    return RulePage.of(name, what, why, RulePage.HOUSE, Acceptance.NOBODY, example);
  }
}
