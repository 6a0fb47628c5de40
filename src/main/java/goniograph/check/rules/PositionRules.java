package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.BAND;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;
import static goniograph.check.rules.ExampleFiles.PRECAUTIONS;
import static goniograph.check.rules.ExampleFiles.REACH;
import static goniograph.check.rules.ExampleFiles.ROCK;
import static goniograph.check.rules.ExampleFiles.without;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import java.util.List;

/**
 * Rules that are rows of the clinic's table: what follows from where the body is and how it moves.
 */
final class PositionRules {
  private static final String LIST = "precautions:\n";
  private static final String OTAGO = "Robertson and Campbell 2003 (Otago exercise programme)";

  private PositionRules() {}

  static List<Rule> all() {
    return List.of(
        rule(
            "harder-balance",
            "On the feet with eyes closed, on a soft surface or with the head moving, in the fields,"
                + " in the figure or in a line of the text, or told to let go of the support:"
                + " `s-helper`, `s-dizzy-stop` and someone near.",
            "Each takes away one of the senses, or the hold, that keep a person upright.",
            OTAGO,
            without("s-dizzy-stop", HEEL_TO_TOE)),
        rule(
            "bent-or-turned-spine",
            "In the figure the spine bends or turns more than 20 deg with a load, or near the end of"
                + " its range without, or the trunk leans more than 30 deg with a load: the entry or"
                + " the clinic's table says what to do for `osteoporosis-spine`.",
            "Bent or turned under load, a brittle vertebra breaks.",
            "Giangregorio 2015, Too Fit To Fracture, table 5; the degrees are common practice",
            untold(
                    BAND,
                    "  - { tag: osteoporosis-spine, action: leave-out }\n",
                    "- { tag: latex-allergy, action: adapt,")
                .where("figures/sh-row-band.yaml", "lumbar: flexion 0", "lumbar: flexion 22")
                .alongside(
                    PRECAUTIONS,
                    "  - { tag: osteoporosis-spine, acts_on: bent-or-turned-spine,"
                        + " action: leave-out, entry_may: adapt, source: giangregorio-2015 }\n",
                    "")),
        rule(
            "down-on-the-floor",
            "Lying, kneeling or sitting on the floor or a mat: `s-floor-rise`, and the entry or the"
                + " clinic's table says what to do for `cannot-get-to-floor`.",
            "Who gets down and cannot get up again lies there until somebody comes.",
            RulePage.PRACTICE,
            without("s-floor-rise", REACH)),
        rule(
            "flat-on-back",
            "Lying flat on the back for a session of two minutes or more: the entry or the clinic's"
                + " table says what to do for `pregnant-avoid-lying-flat` and `breathless`.",
            "Lying flat presses the great vein in later pregnancy, and takes the breath of others.",
            "American College of Obstetricians and Gynecologists; the two minutes are common"
                + " practice",
            untold(
                    ROCK,
                    "  - { tag: pregnant-avoid-lying-flat, action: leave-out }\n",
                    "- { tag: recent-surgery-low-back, action:")
                .alongside(
                    PRECAUTIONS,
                    "  - { tag: pregnant-avoid-lying-flat, acts_on: flat-on-back,"
                        + " action: leave-out, entry_may: adapt, source: acog-2020 }\n",
                    "")),
        rule(
            "rise-slowly",
            "Rising from a seat, getting up from lying, the head below the hips, or on the feet with"
                + " the trunk leaning 45 deg or more: `s-rise-wait` and `s-dizzy-stop`.",
            "Blood pressure drops on rising, and people fall.",
            RulePage.PRACTICE,
            without("s-rise-wait", CHAIR_RISE)),
        rule(
            "chair-cannot-slide",
            "A chair that is pushed, pulled, held or risen from needs `s-chair-wall`; one that is"
                + " merely sat on does not.",
            "A chair that slides away behind the knees is a fall.",
            OTAGO + ": a stable, fixed support",
            without("s-chair-wall", CHAIR_RISE)),
        rule(
            "hip-past-limit",
            "In the figure a hip bends to 88 deg or more at any moment, or a knee or ankle is more"
                + " than 1 cm past the midline: the entry or the clinic's table says what to do for"
                + " `hip-replacement-precautions`.",
            "A new hip can slip out of its socket there.",
            "HSS Journal 2019, hip precautions (90 deg, midline); 2 deg of margin are common"
                + " practice",
            untold(
                    CHAIR_RISE,
                    "  - { tag: hip-replacement-precautions, action: adapt,"
                        + " limits: { seat_height: 55.. cm } }\n",
                    "- { tag: cannot-stand-alone, action:")
                .insteadOf(
                    "precautions:\n  - { tag: hip-replacement-precautions, action: adapt,"
                        + " limits: { seat_height: 55.. cm } }\n"
                        + "  - { tag: cannot-stand-alone, action:")
                .alongside(
                    PRECAUTIONS,
                    "  - { tag: hip-replacement-precautions, acts_on: hip-past-limit,"
                        + " action: leave-out, entry_may: adapt, source: hss-2019 }\n",
                    "")),
        rule(
            "knees-padded",
            "Weight on a knee: `s-kneel-pad`, and the entry or the clinic's table says what to do for"
                + " `cannot-kneel`.",
            "The skin and the kneecap on a hard floor hurt long before the exercise is over.",
            RulePage.PRACTICE,
            without("s-kneel-pad", REACH)));
  }

  /** A list of precautions with and without its first line; the finding begins where it does. */
  private static Example untold(String file, String line, String next) {
    return Example.in(file, LIST + line + "  " + next, LIST + "  «" + next)
        .insteadOf(LIST + "  " + next);
  }

  private static Rule rule(String name, String what, String why, String source, Example example) {
    return new RequiredByTable(
        RulePage.of(name, what, why, source, Acceptance.SIGNED_TABLE, example));
  }
}
