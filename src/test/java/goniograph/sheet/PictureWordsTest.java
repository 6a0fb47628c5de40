package goniograph.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.FingerShape;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.figure.HandPlace;
import goniograph.figure.PoseTelling;
import goniograph.language.Language;
import goniograph.language.Phrases;
import goniograph.library.Library;
import goniograph.pose.Part;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.SupportKind;
import goniograph.pose.ThingKind;
import goniograph.pose.View;
import goniograph.source.DiskFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What drawings show, in the words of the demo library. */
class PictureWordsTest {
  private static final Library LIBRARY = Library.read(DiskFiles.at(Path.of(""))).library();
  private static final List<String> LANGUAGES = List.of("en", "ar");

  private static Phrases phrases(String language) {
    return Phrases.of(
        Language.of(language).orElseThrow(), LIBRARY.phrases(language).orElseThrow().patterns());
  }

  private static PictureWords words(PoseFile pose, String language) {
    return PictureWords.of(phrases(language), PoseTelling.of(PoseSolver.solve(pose).scene()));
  }

  private static PoseFile demo(String id) {
    return PoseReader.read(LIBRARY.figure(id).orElseThrow(), finding -> {}).get(0);
  }

  private static PoseFile pose(String yaml) {
    return PoseReader.read(SourceFile.of("figures/t.yaml", yaml), finding -> {}).get(0);
  }

  @Test
  void aMovementPanelByPanel() {
    PictureWords words = words(demo("hp-chair-rise"), "en");
    assertEquals(
        "A person sits, seen from the side, with the hips on the chair, the hands on the thighs and"
            + " the feet on the floor. Sit tall.",
        words.panel(1, "Sit tall"));
    assertEquals(
        "Lean. The trunk leans forward, the hips bend and both arms reach forward."
            + " Now: the hands at hip height, in front.",
        words.panel(2, "Lean"));
    assertTrue(words.panel(3, "").contains("the legs straighten"));
    assertTrue(words.panel(3, "").contains("the hips off the chair"));
  }

  @Test
  void whatIsHeldIsTold() {
    assertTrue(words(demo("sh-row-band"), "en").panel(1, "").contains("the band in both hands"));
    assertTrue(words(demo("sh-row-band"), "ar").panel(1, "").contains("في اليدين"));
  }

  @Test
  void feetOnOneLineAreToldAndMirrorWithTheSide() {
    PoseFile pose = demo("ba-heel-toe-stand");
    assertTrue(words(pose, "en").panel(1, "").contains("the right foot straight in front"));
    assertTrue(
        words(pose.mirrored(), "en").panel(1, "").contains("the left foot straight in front"));
    assertTrue(words(pose.mirrored(), "en").panel(1, "").contains("the right fingertips on"));
  }

  /** What a still pose is apart from its base posture is told as if it were taken from there. */
  @Test
  void aStillPose() {
    PoseFile pose =
        pose(
            "pose: t\nbase: standing\nview: front\ncontacts: [right foot on floor]\n"
                + "angles: {hip left: flexion 60, knee left: flexion 84}\n");
    assertEquals(
        "A person stands, seen from the front, with the right foot on the floor."
            + " Here the left leg bends at hip and knee.",
        words(pose, "en").panel(1, ""));
  }

  @Test
  void therapistsHearDegrees() {
    String measured = words(demo("sh-row-band"), "en").measured();
    assertTrue(measured.contains("Both elbows, flexion: 15 to 95 degrees."), measured);
    assertTrue(!words(demo("sh-row-band"), "en").whole().contains("degrees"));
  }

  /** Every word that a pose file can hold has its phrase in every language that is written. */
  @Test
  void nothingThatCanBeDrawnIsWithoutItsPhrase() {
    for (String language : LANGUAGES) {
      TreeSet<String> missing = new TreeSet<>(needed());
      missing.removeAll(phrases(language).ids());
      assertEquals(List.of(), new ArrayList<>(missing), language);
    }
  }

  private static List<String> needed() {
    Stream<String> enums =
        Stream.of(
                Arrays.stream(BasePosture.values()).map(base -> "posture." + base.word()),
                Arrays.stream(View.values()).map(view -> "view." + view.word()),
                Arrays.stream(Part.values())
                    .map(part -> "part." + part.name().toLowerCase(java.util.Locale.ROOT)),
                Arrays.stream(SupportKind.values())
                    .flatMap(kind -> Stream.of("at." + kind.word(), "off." + kind.word())),
                Arrays.stream(FingerShape.values()).map(shape -> "shape." + shape.word()),
                Arrays.stream(ThingKind.values())
                    .flatMap(
                        thing -> Stream.of("holding." + thing.word(), "let-go." + thing.word())),
                Arrays.stream(HandPlace.Height.values()).map(height -> "height." + height.word()),
                Arrays.stream(HandPlace.Reach.values()).map(reach -> "reach." + reach.word()),
                Arrays.stream(Joint.values()).map(joint -> "joint." + joint.word()),
                Arrays.stream(Movement.values())
                    .map(
                        movement ->
                            "movement." + movement.name().toLowerCase(java.util.Locale.ROOT)))
            .flatMap(ids -> ids);
    return enums.map(id -> "figure." + id).toList();
  }

  /** All poses there are, on both sides, and each of their joints moved alone. */
  @Test
  void nothingIsLeftUnsaid() {
    List<PoseFile> poses = new ArrayList<>();
    for (SourceFile file : LIBRARY.figures().values()) {
      poses.addAll(PoseReader.read(file, LIBRARY.figures(), finding -> {}));
    }
    poses.addAll(single());
    for (String language : LANGUAGES) {
      Phrases phrases = phrases(language);
      for (PoseFile pose : poses) {
        Wording wording = new Wording(phrases);
        PoseTelling telling = PoseTelling.of(PoseSolver.solve(pose.mirrored()).scene());
        String words = new PictureWords(wording, phrases.language(), telling).measured();
        assertEquals(List.of(), wording.gaps(), pose.id());
        assertTrue(!words.contains("  "), words);
      }
    }
  }

  /** A pose for each joint and movement, there, back and the other way. */
  private static List<PoseFile> single() {
    List<PoseFile> poses = new ArrayList<>();
    for (Joint joint : Joint.values()) {
      String key = joint.word() + (joint.paired() ? " right" : "");
      for (Movement movement : joint.movements()) {
        int size = movement.unit() == Movement.Unit.CM ? 4 : 35;
        poses.add(moved(key, movement, 0, size));
        poses.add(moved(key, movement, size, 0));
        poses.add(moved(key, movement, 0, -size));
      }
    }
    return poses;
  }

  private static PoseFile moved(String key, Movement movement, int from, int to) {
    String typed = movement.positive() + " ";
    return pose(
        "pose: t\nbase: standing\ncontacts: [feet on floor]\nstart: {"
            + key
            + ": "
            + typed
            + from
            + "}\nend: {"
            + key
            + ": "
            + typed
            + to
            + "}\n");
  }

  @Test
  void theWordsAreThoseOfTheLanguage() {
    assertEquals("a, b and c", Language.ENGLISH.list(List.of("a", "b", "c")));
    assertEquals("a i b", Language.of("pl").orElseThrow().list(List.of("a", "b")));
  }
}
