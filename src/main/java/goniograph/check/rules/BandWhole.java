package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** A band must be looked over before each use. */
public final class BandWhole extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "band-whole",
          "An exercise with a band needs `s-band-check`, and says what to do for `latex-allergy`.",
          "A band that snaps hits the face; latex makes some people ill.",
          "Common practice, no source",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-band-check", ExampleFiles.BAND));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
