package goniograph.pose;

import static goniograph.body.Joint.ELBOW;
import static goniograph.body.Joint.HIP;
import static goniograph.body.Joint.NECK;
import static goniograph.body.Movement.ABDUCTION;
import static goniograph.body.Movement.BEND;
import static goniograph.body.Movement.FLEXION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Side;
import goniograph.finding.Finding;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Poses that build on others. */
class ExtendsTest {
  private static final String BOW =
      """
      pose: bow
      base: standing
      supports: {chair: {height: 40}, wall: {}}
      contacts: [feet on floor]
      angles: {hip both: "flexion 50, abduction 5"}
      start: {}
      end: {elbow right: flexion 40, neck: bend left 10}
      marks: [balance]
      """;

  private final TreeMap<String, SourceFile> figures = new TreeMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private List<PoseFile> read(String id, String text) {
    SourceFile file = SourceFile.of("figures/" + id + ".yaml", text);
    figures.put(id, file);
    return PoseReader.read(file, figures, findings::add);
  }

  private PoseFile deep(String more) {
    read("bow", BOW);
    PoseFile pose = read("deep", "pose: deep\nextends: bow\n" + more).get(0);
    assertEquals(List.of(), findings);
    return pose;
  }

  private static double end(PoseFile pose, goniograph.body.Joint joint, Side side) {
    return pose.angles(pose.frames().get(1)).get(joint, side, FLEXION);
  }

  @Test
  void everyKeyIsTakenOver() {
    PoseFile pose = deep("");
    assertEquals("deep", pose.id());
    assertEquals(BasePosture.STANDING, pose.base());
    assertEquals(List.of(new Mark.Balance()), pose.marks());
    assertEquals(40, end(pose, ELBOW, Side.RIGHT));
  }

  /** A movement typed anew leaves the joint's other movements as they were. */
  @Test
  void anglesAreLaidOverMovementByMovement() {
    PoseFile pose = deep("angles: {hip left: flexion 80}");
    assertEquals(80, end(pose, HIP, Side.LEFT));
    assertEquals(50, end(pose, HIP, Side.RIGHT));
    assertEquals(5, pose.angles(pose.frames().get(1)).get(HIP, Side.LEFT, ABDUCTION));
  }

  @Test
  void mapsAreLaidOverKeyByKeyAndListsWhole() {
    PoseFile pose = deep("supports: {chair: {height: 50}}\nmarks: []");
    assertEquals(50, pose.support("chair").orElseThrow().heightCm());
    assertTrue(pose.support("wall").isPresent());
    assertEquals(List.of(), pose.marks());
  }

  @Test
  void mirrorSwapsWhatIsTakenOverAndWhatIsTyped() {
    PoseFile pose = deep("mirror: true\nend: {elbow left: flexion 70}");
    assertEquals(40, end(pose, ELBOW, Side.LEFT));
    assertEquals(70, end(pose, ELBOW, Side.RIGHT));
    assertEquals(10, pose.angles(pose.frames().get(1)).get(NECK, BEND));
  }

  @Test
  void aPoseOfTheSameFileComesBeforeAFile() {
    read("bow", BOW);
    List<PoseFile> poses = read("two", "pose: bow\nbase: sitting\n---\npose: two\nextends: bow\n");
    assertEquals(BasePosture.SITTING, poses.get(1).base());
    assertEquals(List.of(), findings);
  }

  @Test
  void aPoseMayBuildOnOneThatBuildsOnAnother() {
    deep("");
    PoseFile pose = read("deeper", "pose: deeper\nextends: deep\nbase: sitting\n").get(0);
    assertEquals(BasePosture.SITTING, pose.base());
    assertEquals(40, end(pose, ELBOW, Side.RIGHT));
    assertEquals(
        Set.of("bow", "deep"),
        PoseReader.extended(figures.getOrDefault("deeper", SourceFile.of("", "")), figures));
  }

  @Test
  void anUnknownPoseHasItsNearest() {
    read("bow", BOW);
    read("deep", "pose: deep\nbase: standing\nextends: bwo\n");
    assertEquals(
        List.of("3:10 pose-extends-unknown Write `extends: bow`."),
        findings.stream().map(f -> place(f) + " " + f.rule() + " " + f.mend()).toList());
  }

  @Test
  void aRingIsFoundInEachOfItsPoses() {
    SourceFile a = SourceFile.of("figures/a.yaml", "pose: a\nbase: standing\nextends: b\n");
    figures.put("a", a);
    read("b", "pose: b\nbase: standing\nextends: a\n");
    assertEquals(List.of("3:10 pose-extends-cycle"), said());
    PoseReader.read(a, figures, findings::add);
    assertEquals("figures/a.yaml", findings.get(1).at().file());
  }

  /** What is wrong with a base is said once, where it stands; here only that it is wrong. */
  @Test
  void aFaultyBaseIsOneFinding() {
    figures.put("bow", SourceFile.of("figures/bow.yaml", BOW.replace("elbow", "elbwo")));
    read("deep", "pose: deep\nextends: bow\n");
    assertEquals(List.of("2:10 pose-extends-faulty"), said());
  }

  private List<String> said() {
    return findings.stream().map(f -> place(f) + " " + f.rule()).toList();
  }

  private static String place(Finding finding) {
    return finding.at().line() + ":" + finding.at().column();
  }
}
