package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.BAND;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading numbers and quantities finds. */
final class QuantityPages {
  private static final String UCUM =
      "Unified Code for Units of Measure (UCUM) for the units; the spelling is a rule of the house";

  private QuantityPages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "quantity-unit-missing",
            "A time, load, length or angle without its unit.",
            "`hold: 30` is half a minute to one reader and half an hour to another.",
            Example.in(HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «20»\n")),
        page(
            "quantity-unit-wrong",
            "A unit that is not known, or that measures something else than the field does.",
            "A time in kilograms cannot be meant, and nobody can tell what is.",
            Example.in(HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «20 kg»\n"),
            Example.in(HEEL_TO_TOE, "  reps: 3\n", "  reps: «3 s»\n")),
        page(
            "quantity-spelling",
            "A number that is not spelt in the one way that everybody reads alike: digits, decimal"
                + " point, one space, unit; a range with two dots.",
            "`1:30` is 90 seconds to some and one and a half hours to others, `2,5` is 25 to some.",
            Example.in(HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «1:30»\n"),
            Example.in(HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «20s»\n"),
            Example.in(HEEL_TO_TOE, "  reps: 3\n", "  reps: «010»\n"),
            Example.in(BAND, "  duration: 8 wk\n", "  duration: «7,5 wk»\n")),
        page(
            "quantity-range",
            "A range where one number is wanted, or one that runs downwards.",
            "The sheet can print one number there.",
            Example.in(HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «20..30 s»\n"),
            Example.in(CHAIR_RISE, "  effort: 3..4\n", "  effort: «4..3»\n")),
        page(
            "quantity-out-of-bounds",
            "A number that its field cannot take: too small, too great, below zero or not whole.",
            "Pain and effort go from 0 to 10, a week has seven days.",
            Example.in(CHAIR_RISE, "days_per_week: 5 }", "days_per_week: «9» }")));
  }

  private static RulePage page(String name, String what, String why, Example... examples) {
    return RulePage.of(name, what, why, UCUM, Acceptance.NOBODY, examples);
  }
}
