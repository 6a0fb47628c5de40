package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.figure.PoseTelling.Change;
import goniograph.figure.PoseTelling.Sides;
import java.util.List;
import org.junit.jupiter.api.Test;

class PoseTellingTest {
  @Test
  void tellsWhatMovesRoundedToFive() {
    PoseTelling telling = PoseTelling.of(Poses.armRaise(Poses.SIDE));
    assertEquals("standing", telling.base());
    Change first = telling.changes().get(0);
    assertEquals(
        List.of(Joint.SHOULDER, Sides.RIGHT, Movement.FLEXION, 0, 80),
        List.of(first.joint(), first.sides(), first.movement(), first.from(), first.to()));
  }

  @Test
  void tellsBothSidesInOne() {
    PoseTelling telling = PoseTelling.of(Poses.lean(Poses.SIDE));
    assertEquals(List.of("chair"), telling.supports());
    assertEquals(
        List.of(
            new Change(2, Joint.PELVIS, Sides.MIDLINE, Movement.TILT, -10, 30),
            new Change(2, Joint.HIP, Sides.BOTH, Movement.FLEXION, 75, 115)),
        telling.changes());
  }
}
