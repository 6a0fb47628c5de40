package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** Eyes closed, soft ground or a moving head need someone near. */
public final class HarderBalance extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "harder-balance",
          "On the feet with eyes closed, on a soft surface or with the head moving: `s-helper`, `s-dizzy-stop` and someone near.",
          "Each takes away one of the senses that keep a person upright.",
          "Robertson and Campbell 2003 (Otago exercise programme)",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-dizzy-stop", ExampleFiles.HEEL_TO_TOE));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
