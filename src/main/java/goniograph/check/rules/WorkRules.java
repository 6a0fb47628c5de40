package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.ADVICE;
import static goniograph.check.rules.ExampleFiles.BAND;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.needing;
import static goniograph.check.rules.ExampleFiles.without;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import java.util.List;

/** Rules that are rows of the clinic's table: what follows from effort, load and things used. */
final class WorkRules {
  private WorkRules() {}

  static List<Rule> all() {
    return List.of(
        rule(
            "breathe-on-effort",
            "An isometric hold of 5 s or more, a stretch held for 15 s or more, or effort of 5 or"
                + " more needs `s-breathe`; and, unless it is a stretch, the entry or the clinic's"
                + " table says what to do for `blood-pressure-not-controlled`.",
            "Who holds the breath on effort drives up the blood pressure.",
            "Wiles 2018, blood pressure during a wall squat; the limits are common practice",
            without("s-breathe", BAND)),
        rule(
            "band-whole",
            "An elastic band needs `s-band-check`, and the entry or the clinic's table says what to"
                + " do for `latex-allergy`.",
            "A band with a nick snaps into the face; some people react to latex.",
            RulePage.PRACTICE,
            without("s-band-check", BAND)),
        rule(
            "weight-in-hand",
            "A weight in the hand needs `s-grip`.",
            "A weight that slips falls on a foot, or pulls at a joint.",
            RulePage.PRACTICE,
            needing(CHAIR_RISE, "s-grip")
                .where(
                    CHAIR_RISE,
                    "load: { kind: part-body, legs: two-legs }",
                    "load: { kind: mass, mass: 2 kg }")),
        rule(
            "hard-work",
            "Aerobic work, effort of 6 or more, or climbing a step needs `s-talk`.",
            "Who can still talk is not working too hard for the heart.",
            "Robertson and Campbell 2003 (Otago exercise programme); the limits are common practice",
            needing(BAND, "s-talk").where(BAND, "effort: 4..5", "effort: 4..6")),
        rule(
            "skin-of-the-foot",
            "Bare feet, or a band round the foot: `s-skin-feet`, and the entry or the clinic's table"
                + " says what to do for `numb-feet`.",
            "A foot that feels little does not tell of a blister.",
            RulePage.PRACTICE,
            needing(BAND, "s-skin-feet").where(BAND, "feet: shoes", "feet: bare")),
        rule(
            "every-exercise",
            "Every exercise carries `s-chest`, `s-worse`, `s-pain-ease` and `s-morning`. Its"
                + " finish-by line comes from `duration`, which `dose-incomplete` asks for.",
            "They say when to call, when to stop, and that the next morning decides.",
            "Robertson and Campbell 2003 (Otago exercise programme); Silbernagel 2007 for the pain"
                + " rule",
            without("s-chest", CHAIR_RISE)),
        rule(
            "heat-cold-tape-brace",
            "A text that names heat, cold, tape or a brace for the body needs `s-skin-test`,"
                + " `s-heat-time` and `s-not-asleep`.",
            "Skin that feels little is burnt or rubbed open without a warning.",
            RulePage.PRACTICE,
            needing(ADVICE, "s-heat-time", "s-not-asleep", "s-skin-test")
                .where(
                    ADVICE,
                    "- Soreness that comes and goes is a normal part of getting stronger.",
                    "- A heat pack may ease soreness that comes and goes.")));
  }

  private static Rule rule(String name, String what, String why, String source, Example example) {
    return new RequiredByTable(
        RulePage.of(name, what, why, source, Acceptance.SIGNED_TABLE, example));
  }
}
