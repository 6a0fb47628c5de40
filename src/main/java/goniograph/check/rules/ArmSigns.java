package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** Work at the shoulder needs the sentence about spreading pain. */
public final class ArmSigns extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "arm-signs",
          "An exercise of the shoulder carries `s-spread`.",
          "Pain or numbness that spreads down the arm may come from the neck.",
          "Common practice, no source",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-spread", ExampleFiles.BAND));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
