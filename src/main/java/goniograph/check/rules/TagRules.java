package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.BAND;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;
import static goniograph.check.rules.ExampleFiles.PRECAUTIONS;
import static goniograph.check.rules.ExampleFiles.REACH;
import static goniograph.check.rules.ExampleFiles.ROCK;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import java.util.List;

/** The rules of the precaution tags: rows of the clinic's table, {@code tag-} and the tag. */
final class TagRules {
  private static final String OTAGO = "Robertson and Campbell 2003 (Otago exercise programme)";
  private static final String SURGEON = RulePage.PRACTICE + "; the surgeon's own limits come first";
  private static final String AND_LAXER =
      " An entry may say something stricter; it must not be laxer.";

  private TagRules() {}

  static List<Rule> all() {
    return List.of(
        rule(
            "balance-problem",
            "Acts on `support-when-unsteady` and `harder-balance`. Adapt: only steps with a hand on"
                + " the support.",
            "Who already sways needs the hand there before the fall, not after.",
            OTAGO,
            heel(
                "{ tag: balance-problem, action: leave-out }",
                "action: «advise», statement: s-helper }")),
        rule(
            "falls-last-year",
            "Acts on `support-when-unsteady` and `harder-balance`. Adapt: only steps with a hand on"
                + " the support, and add `s-helper`.",
            "A fall in the last year is the best sign that another will come.",
            OTAGO,
            Example.in(
                HEEL_TO_TOE,
                "{ tag: falls-last-year, action: adapt, limits: { ladder_max: 2 },",
                "{ tag: falls-last-year, action: «adapt», limits: { ladder_max: 3 },")),
        rule(
            "dizziness",
            "Acts on `harder-balance`, stepping and the head below the hips: leave out. Elsewhere on"
                + " the feet: add `s-dizzy-stop`.",
            "Each of these makes the room turn for someone who is dizzy already.",
            OTAGO + "; leaving out is common practice",
            Example.in(
                HEEL_TO_TOE,
                "{ tag: dizziness, action: leave-out }",
                "{ tag: dizziness, action: «adapt», limits: { hold: ..10 s } }")),
        rule(
            "blood-pressure-not-controlled",
            "Acts on `breathe-on-effort`, but not on stretches. Adapt: hold 5 s at most, effort 4 at"
                + " most. With the head below the hips: leave out.",
            "Held effort and a low head drive the pressure up.",
            "Wiles 2018, blood pressure during a wall squat; the limits are common practice",
            Example.in(
                BAND,
                "{ tag: blood-pressure-not-controlled, action: adapt, limits: { effort: ..4 } }",
                "{ tag: blood-pressure-not-controlled, action: adapt, limits: { effort: «..5» } }")),
        rule(
            "heart-symptoms",
            "Acts on aerobic work, effort of 5 or more and isometric holds of 5 s or more: leave"
                + " out.",
            "They load the heart before anybody has looked at it.",
            "Wiles 2018; the limits are common practice",
            band(
                "{ tag: heart-symptoms, action: leave-out }",
                "action: «adapt», limits: { effort: ..4 } }")),
        rule(
            "breathless",
            "Acts on `flat-on-back`: adapt, propped up on pillows. On aerobic work and effort of 5 or"
                + " more: add `s-talk`.",
            "Lying flat and hard work take the breath of people who have little.",
            RulePage.PRACTICE,
            rock(
                "{ tag: breathless, action: leave-out }", "action: «advise», statement: s-talk }")),
        rule(
            "osteoporosis-spine",
            "Acts on `bent-or-turned-spine`: leave out, or the entry adapts to a flat back without"
                + " load and says how.",
            "Bent or turned under load, a brittle vertebra breaks.",
            "Giangregorio 2015, Too Fit To Fracture, table 5",
            band(
                    "{ tag: osteoporosis-spine, action: leave-out }",
                    "action: «adapt», statement: s-worse }")
                .where("figures/sh-row-band.yaml", "lumbar: flexion 0", "lumbar: flexion 22")),
        rule(
            "hip-replacement-precautions",
            "Acts on `hip-past-limit`: leave out, or the entry adapts (higher seat, less lean) and"
                + " says how. The surgeon's own limits come first.",
            "A new hip can slip out of its socket.",
            "HSS Journal 2019, hip precautions",
            Example.in(
                CHAIR_RISE,
                "{ tag: hip-replacement-precautions, action: adapt, limits: { seat_height: 55.. cm } }",
                "{ tag: hip-replacement-precautions, action: «advise», statement: s-worse }")),
        rule(
            "recent-surgery",
            "`recent-surgery-` and a region acts on exercises of that region: leave out, not to be"
                + " decided otherwise at the desk, unless the entry names the tag with limits.",
            "What was sewn must heal first.",
            SURGEON,
            Example.in(
                BAND,
                "{ tag: recent-surgery-shoulder, action: leave-out, override: false }",
                "{ tag: recent-surgery-shoulder, action: «advise», statement: s-worse }")),
        rule(
            "tendon-repair",
            "`tendon-repair-` and a region acts on exercises of that region: leave out, not to be"
                + " decided otherwise at the desk.",
            "A repaired tendon that is pulled too soon tears again.",
            SURGEON,
            band(
                "{ tag: tendon-repair-shoulder, action: leave-out }",
                "action: «adapt», limits: { effort: ..4 } }")),
        rule(
            "pregnant-avoid-lying-flat",
            "Acts on `flat-on-back`: the entry's variant sitting, on the side or half-lying, or else"
                + " leave out. From which week: `pregnancy_avoid_lying_flat_from` of the clinic.",
            "The womb presses on the great vein, and the mother faints.",
            "American College of Obstetricians and Gynecologists, older lists; 2020 wording not"
                + " seen",
            rock(
                "{ tag: pregnant-avoid-lying-flat, action: leave-out }",
                "action: «advise», statement: s-dizzy-stop }")),
        rule(
            "numb-feet",
            "Acts on `skin-of-the-foot` and `support-when-unsteady`. Adapt: shoes, a hand on the"
                + " support, and add `s-skin-feet`.",
            "Feet that feel little neither find the floor nor tell of a blister.",
            RulePage.PRACTICE,
            Example.in(
                HEEL_TO_TOE,
                "{ tag: numb-feet, action: adapt, limits: { ladder_max: 2 },",
                "{ tag: numb-feet, action: «adapt», limits: { ladder_max: 3 },")),
        rule(
            "fragile-skin",
            "Acts on a band: adapt, a cloth under it. On heat and cold: adapt, a cloth between. On"
                + " `knees-padded`: adapt, a thick pad. On tape: leave out.",
            "Thin skin tears or burns where other skin reddens.",
            RulePage.PRACTICE,
            band(
                "{ tag: fragile-skin, action: leave-out }",
                "action: «advise», statement: s-band-check }")),
        rule(
            "latex-allergy",
            "Acts on `band-whole`. Adapt: the latex-free twin of the band in the clinic's stock;"
                + " where there is none, leave out.",
            "Latex can close the throat of someone who is allergic.",
            RulePage.PRACTICE,
            Example.in(
                BAND,
                "{ tag: latex-allergy, action: adapt, swap: { band-light: band-light-latex-free,"
                    + " band-medium: band-medium-latex-free } }",
                "{ tag: latex-allergy, action: «advise», statement: s-band-check }")),
        rule(
            "cannot-get-to-floor",
            "Acts on `down-on-the-floor`: the entry's variant on a bed or chair, or else leave out.",
            "Who cannot get up again lies there until somebody comes.",
            RulePage.PRACTICE,
            reach(
                "{ tag: cannot-get-to-floor, action: leave-out }",
                "action: «advise», statement: s-floor-rise }")),
        rule(
            "cannot-kneel",
            "Acts on `knees-padded`: leave out.",
            "A pad does not help a knee that cannot take the weight.",
            RulePage.PRACTICE,
            reach(
                "{ tag: cannot-kneel, action: leave-out }",
                "action: «adapt», limits: { hold: ..3 s } }")),
        rule(
            "cannot-stand-alone",
            "Acts on every entry that stands at any moment, rising from a chair too: leave out, not"
                + " to be decided otherwise at the desk.",
            "At home nobody is there to hold them.",
            RulePage.PRACTICE,
            Example.in(
                CHAIR_RISE,
                "{ tag: cannot-stand-alone, action: leave-out, override: false }",
                "{ tag: cannot-stand-alone, action: leave-out, override: «true» }")),
        rule(
            "poor-sight",
            "Acts on closed eyes and stepping: leave out. On the pack: large print is offered.",
            "Balance leans on what the eyes see; a step must be seen.",
            RulePage.PRACTICE,
            heel(
                    "{ tag: poor-sight, action: leave-out }",
                    "action: «advise», statement: s-helper }")
                .where(HEEL_TO_TOE, "head_movement: true,", "vision: closed,")),
        rule(
            "memory-problem",
            "Acts on the pack. Adapt: two entries at most, picture-first offered, and going up is"
                + " decided by the therapist. An entry can only leave out.",
            "Few exercises are remembered better than many.",
            "Henry 1999: 15 adults aged 67 to 82 did two exercises better than eight",
            heel(
                "{ tag: memory-problem, action: leave-out }",
                "action: «advise», statement: s-helper }")),
        rule(
            "blood-thinners",
            "Acts on every entry on the feet: add `s-fall-hurt`. Here the rule only says if the"
                + " table has no row for the tag.",
            "A blow to the head can bleed inside for hours unnoticed.",
            RulePage.PRACTICE,
            Example.in(
                    PRECAUTIONS,
                    "tags:\n  - { tag: balance-problem,",
                    "tags:\n  - «{ tag: balance-problem,")
                .alongside(
                    PRECAUTIONS,
                    "  - { tag: blood-thinners, acts_on: on-the-feet, action: advise,"
                        + " statements: [s-fall-hurt], source: common-practice }\n",
                    "")),
        rule(
            "joint-flare",
            "`joint-flare-` and a region acts on exercises of that region with a load or with effort"
                + " of 4 or more. Adapt: the lowest step, effort 3 at most.",
            "A hot joint is kept moving, not pushed.",
            RulePage.PRACTICE,
            band(
                "{ tag: joint-flare-shoulder, action: leave-out }",
                "action: «advise», statement: s-worse }")),
        rule(
            "fear-of-movement",
            "Acts on the pack: the topic ad-how-much-pain is added. An entry can only leave out.",
            "Knowing what is harmless sets people moving.",
            RulePage.PRACTICE,
            heel(
                "{ tag: fear-of-movement, action: leave-out }",
                "action: «advise», statement: s-helper }")),
        rule(
            "lives-alone",
            "Acts on steps with a helper near, and on those where another tag asks for `s-helper`:"
                + " leave out.",
            "There is no helper.",
            RulePage.PRACTICE,
            heel(
                "{ tag: lives-alone, action: adapt, limits: { ladder_max: 3 } }",
                "action: «adapt», limits: { hold: ..20 s } }")));
  }

  private static Example heel(String good, String bad) {
    return instead(HEEL_TO_TOE, "{ tag: dizziness, action: leave-out }", good, bad);
  }

  private static Example band(String good, String bad) {
    return instead(
        BAND, "{ tag: recent-surgery-shoulder, action: leave-out, override: false }", good, bad);
  }

  private static Example rock(String good, String bad) {
    return instead(
        ROCK, "{ tag: recent-surgery-low-back, action: leave-out, override: false }", good, bad);
  }

  private static Example reach(String good, String bad) {
    return instead(REACH, "{ tag: dizziness, action: leave-out }", good, bad);
  }

  /** A precaution in the place of another; bad is what stands behind the tag. */
  private static Example instead(String file, String replaced, String good, String bad) {
    String tag = good.substring(0, good.indexOf("action:"));
    return Example.in(file, good, tag + bad).insteadOf(replaced);
  }

  private static Rule rule(String tag, String what, String why, String source, Example example) {
    return new PrecautionByTable(
        RulePage.of("tag-" + tag, what + AND_LAXER, why, source, Acceptance.SIGNED_TABLE, example));
  }
}
