package goniograph.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.matter.EntryFile;
import goniograph.matter.Piece;
import goniograph.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class SlotDifferenceTest {

  @Test
  void sameSlotsInAnyOrderAndFormAreNoDifference() {
    assertTrue(
        SlotDifference.between(
                piece("Hold {hold}, then change the {side.leg}."),
                piece("Zmień {side.leg:with}, potem {hold}."))
            .isEmpty());
  }

  @Test
  void namesWhatWasLostDoubledAndInvented() {
    assertEquals(
        new SlotDifference(List.of("rest"), List.of("hold"), List.of("reps")),
        SlotDifference.between(
            piece("Hold {hold}. Rest {rest}."), piece("{hold}, {hold} i {reps}.")));
  }

  @Test
  void oneOfTwoLostIsLost() {
    assertEquals(
        new SlotDifference(List.of("hold"), List.of(), List.of()),
        SlotDifference.between(piece("{hold} and *{hold}*."), piece("{hold}.")));
  }

  private static Piece piece(String text) {
    return EntryFile.read(SourceFile.of("x.md", "# T\n## do\n" + text + "\n"))
        .body()
        .pieces("do")
        .get(0);
  }
}
