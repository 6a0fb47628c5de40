package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What only making a sheet finds. */
final class PrintPages {
  private PrintPages() {}

  static List<RulePage> all() {
    return List.of(
        RulePage.of(
            "page-overflow",
            "A block of the page is longer than its place. The finding names the block, how many"
                + " lines are too many, and the first line that does not fit. Only `build` finds it.",
            "What does not fit would run into the block below, or off the paper; type is never made"
                + " smaller.",
            RulePage.HOUSE,
            Acceptance.NOBODY,
            Example.in(
                    ExampleFiles.CHAIR_RISE,
                    "## do\n1. {s-chair-wall}\n",
                    "## «do»\n1. {s-chair-wall}\n" + "1. Stand up.\n".repeat(9))
                .where(ExampleFiles.CHAIR_RISE_ARABIC, Example.Edit.WHOLE, "")));
  }
}
