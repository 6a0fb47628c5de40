package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.SlotTable;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.matter.Inline;
import goniograph.matter.Piece;
import java.util.stream.Stream;

/** A slot that is not in the closed table. */
public final class SlotUnknown implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "slot-unknown",
          "A name in braces that is no slot; the nearest one is offered.",
          "The slot cannot be filled, and the reader would see a brace or a gap.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.HEEL_TO_TOE, "Rest {relax}.", "Rest «{relaxx}»."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    return version.body().pieces().stream()
        .map(Piece::slots)
        .flatMap(slots -> slots.stream())
        .filter(slot -> !SlotTable.knows(slot.name()))
        .map(this::finding);
  }

  private Finding finding(Inline.Slot slot) {
    return error(
        slot.at(), "`{" + slot.name() + "}` is not a slot" + hint(slot.name()), mend(slot.name()));
  }

  private static String hint(String name) {
    String hint = Nearest.hint(name, SlotTable.names());
    return hint.isEmpty() ? "." : hint;
  }

  private static String mend(String name) {
    if (SlotTable.CLINIC.contains(name)) {
      return "Phone and hours stand in the box of every sheet; take the slot out.";
    }
    return Nearest.of(name, SlotTable.names())
        .map(near -> "Write `{" + near + "}`.")
        .orElse("Write one of `{" + String.join("}`, `{", SlotTable.names()) + "}`.");
  }
}
