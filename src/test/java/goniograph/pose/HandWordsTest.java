package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.FingerShape;
import goniograph.body.Fingers;
import goniograph.body.Side;
import goniograph.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

class HandWordsTest {
  private static String pose(String hands) {
    return "pose: test\nbase: standing\nangles: {" + hands + "}\n";
  }

  private static Fingers right(String hands) {
    Scene scene = PoseSolver.solve(Poses.of(pose(hands))).scene();
    return scene.keys().get(0).skeleton().fingers(Side.RIGHT);
  }

  @Test
  void everyShapeCanBeTyped() {
    for (FingerShape shape : FingerShape.values()) {
      assertEquals(shape.fingers(), right("hand right: shape " + shape.word()));
    }
  }

  @Test
  void curlBendsEveryJointAndSingleJointsComeAfter() {
    assertEquals(Fingers.curl(70), right("hand both: curl 70"));
    assertEquals(new Fingers(90, 0, 0, 0), right("hand right: \"shape straight, knuckles 90\""));
    assertEquals(Fingers.REST, right("hand left: shape fist"));
  }

  @Test
  void anUnknownShapeIsFoundAtItsWord() {
    List<Finding> findings = Poses.findings(pose("hand right: shape hok"));
    assertEquals(1, findings.size());
    Finding finding = findings.get(0);
    assertEquals("pose-movement-unknown", finding.rule());
    assertEquals("angles: {hand right: shape ".length() + 1, finding.at().column());
    assertTrue(finding.mend().contains("`hook`"), finding.mend());
  }

  @Test
  void anUnknownMovementOfAHandNamesItsWords() {
    Finding finding = Poses.findings(pose("hand right: wiggle 20")).get(0);
    assertEquals("pose-movement-unknown", finding.rule());
    assertTrue(finding.mend().contains("`curl`, `shape`"), finding.mend());
  }

  /** Fingers close round what is held, more round a stick than round a bottle. */
  @Test
  void anUntypedHandClosesRoundWhatItHolds() {
    double stick = grip("stick").knuckles();
    double bottle = grip("bottle").knuckles();
    assertTrue(stick > bottle && bottle > Fingers.REST.knuckles(), stick + " " + bottle);
  }

  private static Fingers grip(String thing) {
    String pose =
        "pose: test\nbase: standing\nprops: {"
            + thing
            + ": {}}\n"
            + "contacts: [feet on floor, right hand holding "
            + thing
            + "]\n";
    Scene scene = PoseSolver.solve(Poses.of(pose)).scene();
    return scene.keys().get(0).skeleton().fingers(Side.RIGHT);
  }
}
