package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.RulePage;

/** A chair that is risen from or held must stand fast. */
public final class ChairCannotSlide extends RequiredByTable {
  private static final RulePage PAGE =
      RulePage.of(
          "chair-cannot-slide",
          "A chair that is pushed, pulled, held or risen from needs `s-chair-wall`; one that is merely sat on does not.",
          "A chair that slides away behind the knees is a fall.",
          "Robertson and Campbell 2003 (Otago exercise programme): a stable, fixed support",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-chair-wall", ExampleFiles.CHAIR_RISE));

  @Override
  public RulePage page() {
    return PAGE;
  }
}
