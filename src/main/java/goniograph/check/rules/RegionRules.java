package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.BAND;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.ROCK;
import static goniograph.check.rules.ExampleFiles.needing;
import static goniograph.check.rules.ExampleFiles.without;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import java.util.List;

/** Rules that are rows of the clinic's table: what follows from the part of the body. */
final class RegionRules {
  private static final String OF_THE_BAND = "region: [shoulder, upper-back]";
  private static final String OF_THE_RISE = "region: [hip]";

  private RegionRules() {}

  static List<Rule> all() {
    return List.of(
        rule(
            "neck-signs",
            "An exercise of the neck carries `s-stroke`, `s-dizzy-stop`, `s-spread` and"
                + " `s-both-hands`.",
            "A torn neck artery or a pressed cord shows in speech, sight, gait or hands first.",
            "Rushton 2023, framework for examination of the neck's arteries",
            needing(BAND, "s-dizzy-stop", "s-both-hands", "s-stroke")
                .where(BAND, OF_THE_BAND, "region: [neck]")),
        rule(
            "low-back-signs",
            "An exercise of the low back carries `s-saddle` and `s-spread`.",
            "New bladder, bowel or saddle signs are an emergency of hours.",
            "Greenhalgh 2018, cauda equina syndrome",
            without("s-saddle", ROCK)),
        rule(
            "calf-clot-sign",
            "An exercise of knee, calf or ankle carries `s-calf`.",
            "A clot in the calf looks like a sore muscle, and can kill.",
            RulePage.PRACTICE,
            needing(CHAIR_RISE, "s-calf").where(CHAIR_RISE, OF_THE_RISE, "region: [calf]")),
        rule(
            "knee-may-give-way",
            "An exercise of the knee in which the leg carries the body carries `s-give-way`.",
            "A knee that gives way or locks under load makes people fall.",
            RulePage.PRACTICE,
            needing(CHAIR_RISE, "s-calf", "s-give-way")
                .where(CHAIR_RISE, OF_THE_RISE, "region: [knee]")),
        rule(
            "hand-feeling",
            "An exercise of wrist or hand carries `s-numb-fingers`.",
            "Fingers that go or stay numb tell of a pressed nerve.",
            RulePage.PRACTICE,
            needing(BAND, "s-numb-fingers").where(BAND, OF_THE_BAND, "region: [hand]")),
        rule(
            "arm-signs",
            "An exercise of the shoulder carries `s-spread`.",
            "Pain or numbness that spreads down the arm may come from the neck.",
            RulePage.PRACTICE,
            without("s-spread", BAND)));
  }

  private static Rule rule(String name, String what, String why, String source, Example example) {
    return new RequiredByTable(
        RulePage.of(name, what, why, source, Acceptance.SIGNED_TABLE, example));
  }
}
