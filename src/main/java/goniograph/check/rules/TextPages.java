package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.ADVICE;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE_ARABIC;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading the text of an entry finds. */
final class TextPages {
  private static final String MARKDOWN = "CommonMark 0.31, narrowed by the house";

  private TextPages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "text-title-missing",
            "A text has no line `# Title`.",
            "Patient and therapist find the sheet again by its title.",
            Example.in(CHAIR_RISE_ARABIC, "# النهوض عن الكرسي\n", "«»")),
        page(
            "text-structure",
            "A heading, list or paragraph stands where a sheet has no place for it.",
            "A sheet has one title, fixed sections and lists of one level.",
            Example.in(CHAIR_RISE, "## easier\n", "## easier\n«### With your hands»\n")),
        page(
            "text-html",
            "HTML in the text.",
            "Form is the sheet's business, so that all sheets look alike.",
            Example.in(CHAIR_RISE, "Stand tall.", "«<b>»Stand tall.")),
        page(
            "text-image",
            "An image in the text.",
            "Figures are drawn from poses, so that they agree with the dose and the words.",
            Example.in(CHAIR_RISE, "nose over your toes\n", "«![nose over toes](lean.png)»\n")
                .insteadOf("nose over your toes\n")),
        page(
            "text-link",
            "A link in the text.",
            "Paper cannot follow it.",
            Example.in(CHAIR_RISE, "Stand tall.", "«[Stand tall](stand.html)».")),
        page(
            "text-code",
            "Words between back-ticks, or set in by four spaces.",
            "Form is the sheet's business, so that all sheets look alike.",
            Example.in(CHAIR_RISE, "Stand tall.", "«`Stand`» tall.")),
        page(
            "text-character",
            "A control character in the text.",
            "It is invisible and would be lost or printed as a box.",
            Example.in(CHAIR_RISE, "Stand tall.", "Stand «\u0007»tall.")),
        page(
            "slot-brace",
            "A brace without its partner.",
            "The slot would not be filled, and the reader would see a brace.",
            Example.in(HEEL_TO_TOE, "Rest {relax}.", "Rest «{»relax.")),
        page(
            "claim-id",
            "Square brackets that hold something other than the id of a claim.",
            "Square brackets name the evidence of a sentence and are not printed.",
            Example.in(ADVICE, "[next-morning-test]", "[«Next morning»]")),
        page(
            "claim-place",
            "A claim mark that does not stand at the end of a sentence.",
            "It must be plain which sentence the evidence is for.",
            Example.in(
                ADVICE,
                "Then carry on. [next-morning-test]",
                "Then «[next-morning-test]» carry on.")));
  }

  private static RulePage page(String name, String what, String why, Example example) {
    return RulePage.of(name, what, why, MARKDOWN, Acceptance.NOBODY, example);
  }
}
