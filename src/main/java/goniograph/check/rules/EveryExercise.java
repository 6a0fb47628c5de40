package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** The sentences that no exercise goes without. */
public final class EveryExercise extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "every-exercise",
          "Every exercise carries `s-chest`, `s-worse`, `s-pain-ease` and `s-morning`.",
          "They say when to call, when to stop, and that the next morning decides.",
          "Robertson and Campbell 2003 (Otago exercise programme); Silbernagel 2007 for the pain rule",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-chest", ExampleFiles.CHAIR_RISE));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
