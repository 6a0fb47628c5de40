package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Joint;
import goniograph.body.Limb;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PoseReaderTest {
  private static final String HEAD = "pose: test\nbase: standing\n";

  @Test
  void readsAWholePose() {
    PoseFile pose =
        Poses.of(
            """
            pose: one-leg
            base: standing
            view: three-quarter
            person: {height: 160}
            supports: {counter: {side: left, height: 90, distance: 14, x: -6}}
            contacts: [right foot on floor, left hand on counter]
            angles: {hip left: "flexion 60, abduction -5", knee left: flexion 84, pelvis: tilt back 3}
            moving: left leg
            marks: [angle left hip, balance, arrow left knee]
            """);
    assertEquals("one-leg", pose.id());
    assertEquals(BasePosture.STANDING, pose.base());
    assertEquals(View.THREE_QUARTER, pose.view());
    assertEquals(160, pose.body().heightCm());
    assertEquals(
        new SupportWish(
            "counter",
            SupportKind.COUNTER,
            Optional.of(Where.LEFT),
            90,
            90,
            Optional.of(14.0),
            Optional.of(-6.0),
            false),
        pose.supports().get(0));
    assertEquals(
        List.of("right foot on floor", "left hand on counter"),
        pose.contacts().stream().map(Contact::words).toList());
    KeyFrame only = pose.frames().get(0);
    assertEquals("pose", only.name());
    assertEquals(60, pose.angles(only).get(Joint.HIP, Side.LEFT, Movement.FLEXION));
    assertEquals(-5, pose.angles(only).get(Joint.HIP, Side.LEFT, Movement.ABDUCTION));
    assertEquals(-3, pose.angles(only).get(Joint.PELVIS, Movement.TILT));
    assertEquals(
        10, pose.angles(only).get(Joint.ELBOW, Side.RIGHT, Movement.FLEXION), "base posture");
    assertEquals(Set.of(Limb.THIGH, Limb.SHANK, Limb.FOOT), pose.moving().left());
    assertEquals(3, pose.marks().size());
  }

  @Test
  void laterFramesWinOverThePoseAndThePoseOverItsBase() {
    PoseFile pose =
        Poses.of(
            HEAD
                + """
                angles: {elbow both: flexion 30}
                start: {}
                via: {elbow left: flexion 50}
                via 2: {elbow left: flexion 60}
                end: {elbow left: extension 2}
                """);
    assertEquals(
        List.of("start", "via-1", "via-2", "end"),
        pose.frames().stream().map(KeyFrame::name).toList());
    assertEquals(
        List.of(30.0, 50.0, 60.0, -2.0),
        pose.frames().stream()
            .map(f -> pose.angles(f).get(Joint.ELBOW, Side.LEFT, Movement.FLEXION))
            .toList());
  }

  @Test
  void framesAddContactsOfTheirOwn() {
    PoseFile pose = Poses.demo("hp-chair-rise");
    assertEquals(
        List.of(
            "hips on chair",
            "left hand on thighs",
            "right hand on thighs",
            "left foot on floor",
            "right foot on floor"),
        pose.contacts(pose.frames().get(0)).stream().map(Contact::words).toList());
    assertEquals(2, pose.contacts(pose.frames().get(2)).size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          angles: {hipp left: flexion 5}         | pose-joint-unknown    | 10 | hipp
          angles: {hip lefft: flexion 5}         | pose-joint-side       | 14 | lefft
          angles: {hip: flexion 5}               | pose-joint-side       | 10 | hip
          angles: {lumbar left: flexion 5}       | pose-joint-side       | 17 | left
          angles: {hip left: flexon 5}           | pose-movement-unknown | 20 | flexon
          angles: {knee left: abduction 5}       | pose-movement-unknown | 21 | abduction
          angles: {hip left: "flexion 5, abd 9"} | pose-movement-unknown | 32 | abd
          angles: {knee left: flexion}           | pose-angle-number     | 21 | flexion
          contacts: [foots on floor]             | pose-contact-part     | 12 | foots
          contacts: [feet on flor]               | pose-contact-target   | 20 | flor
          contacts: [feet floor]                 | pose-contact-grammar  | 12 | feet floor
          contacts: [hands on chair]             | pose-contact-target   | 21 | chair
          supports: {couner: {}}                 | pose-support-unknown  | 12 | couner
          supports: {chair: {height: 45cm}}      | pose-length           | 28 | 45cm
          moving: left legg                      | pose-moving-unknown   |  9 | left legg
          marks: [arow left hand]                | pose-mark-unknown     |  9 | arow left hand
          start: {knee left: flexion 5}          | pose-frame-alone      |  1 | pose
          camera: [14]                           | pose-camera           |  9 | [14]
          veiw: side                             | field-unknown         |  1 | veiw
          """)
  void everyWordThatIsNotUnderstoodIsFoundAtItsPlace(
      String line, String rule, int column, String typed) {
    List<Finding> findings = Poses.findings(HEAD + line + "\n");
    assertEquals(1, findings.size(), findings.toString());
    Finding finding = findings.get(0);
    assertEquals(rule, finding.rule());
    assertEquals(column, finding.at().column(), finding.toString());
    String text = HEAD + line + "\n";
    assertTrue(
        text.substring(finding.at().start(), finding.at().end()).startsWith(typed),
        text.substring(finding.at().start(), finding.at().end()));
    assertTrue(!finding.mend().isEmpty() && !finding.why().isEmpty());
  }

  @Test
  void theNearestWordIsOffered() {
    Finding finding = Poses.findings(HEAD + "angles: {hip left: flexon 5}\n").get(0);
    assertTrue(finding.what().contains("did you mean `flexion`"), finding.what());
    assertEquals("Write `flexion`.", finding.mend());
  }

  @Test
  void whatIsUnderstoodIsKeptBesideWhatIsNot() {
    List<PoseFile> poses =
        PoseReader.read(
            goniograph.source.SourceFile.of(
                "figures/half.yaml", HEAD + "angles: {knee left: flexion 20, knee rigth: flex"),
            finding -> {});
    assertTrue(poses.size() <= 1);
    List<Finding> findings = Poses.findings("base: standing\nangles: {knie left: flexion 20}\n");
    assertEquals(
        Set.of("field-missing", "pose-joint-unknown"),
        Set.copyOf(findings.stream().map(Finding::rule).toList()));
  }

  @Test
  void mirroringTwiceIsNothing() {
    List<PoseFile> all = new java.util.ArrayList<>(Poses.trials());
    all.addAll(Poses.demos());
    for (PoseFile pose : all) {
      assertEquals(pose, pose.mirrored().mirrored(), pose.id());
    }
  }
}
