package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** Getting up makes some people dizzy. */
public final class RiseSlowly extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "rise-slowly",
          "Rising from a seat, or getting up from lying: `s-rise-wait` and `s-dizzy-stop`.",
          "Blood pressure drops on rising, and people fall.",
          "Common practice, no source",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-rise-wait", ExampleFiles.CHAIR_RISE));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
