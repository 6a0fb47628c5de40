package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** Effort that is held needs the sentence about breathing. */
public final class BreatheOnEffort extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "breathe-on-effort",
          "An isometric hold of 5 s or more, a stretch held for 15 s or more, or effort of 5 or more needs `s-breathe`; and, unless it is a stretch, the entry says what to do for `blood-pressure-not-controlled`.",
          "Who holds the breath on effort drives up the blood pressure.",
          "Wiles 2018, blood pressure during a wall squat; the limits are common practice",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-breathe", ExampleFiles.BAND));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
