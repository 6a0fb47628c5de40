package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Checker;
import goniograph.check.Example;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.source.MemoryFiles;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A checker that cries wolf gets switched off: entries that are right, of many kinds, and entries
 * that come near a limit, stay silent; one step further is found.
 */
class NoFalseAlarmTest {
  private static final String ALL = "s-chest, s-pain-ease, s-morning, s-worse";
  private static final String SITTING =
      "base: sitting\nview: side\nsupports: {chair: {height: 45}}\n"
          + "contacts: [hips on chair, feet on floor]\n";
  private static final String STANDING = "base: standing\nview: side\ncontacts: [feet on floor]\n";
  private static final String LYING =
      "base: lying-on-back\nview: side\nsupports: {bed: {}}\ncontacts: [back on bed, feet on bed]\n"
          + "angles: {hip both: flexion 44, knee both: flexion 99}\n";
  private static final String KNEELING =
      "base: hands-and-knees\nview: side\nsupports: {mat: {}}\n"
          + "contacts: [knees on mat, hands on mat]\n";
  private static final Map<String, String> POSES =
      Map.of("sit", SITTING, "stand", STANDING, "lie", LYING, "kneel", KNEELING);

  /** The rules of this room: those of the two tables, and those of precautions and conditions. */
  private static final Checker CHECKER =
      new Checker(
          RuleBook.rules().stream()
              .filter(
                  rule ->
                      rule instanceof RequiredByTable
                          || rule instanceof PrecautionByTable
                          || rule instanceof TagUnknown
                          || rule instanceof PrecautionUnclear
                          || rule instanceof PrecautionLimit
                          || rule instanceof PrecautionSwap
                          || rule instanceof SupervisionMissing
                          || rule instanceof SocksStanding
                          || rule instanceof StanceAndFigure)
              .toList());

  private static List<String> found(Map<String, String> fields, String pose) {
    String id = "te-sample";
    MemoryFiles files = (MemoryFiles) ExampleLibrary.with(List.of());
    SampleExercises.in(files, id, fields);
    files.with("figures/" + id + ".yaml", "pose: " + id + "\n" + POSES.getOrDefault(pose, pose));
    return CHECKER.check(ExampleLibrary.checked(files)).stream()
        .filter(finding -> finding.entry().equals(id) || finding.at().file().contains(id))
        .filter(finding -> finding.level() != Level.NOTE)
        .map(Finding::rule)
        .distinct()
        .toList();
  }

  private static Map<String, String> fields(String typed, @Nullable String statements) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (String field : typed.split(";")) {
      if (!field.isBlank()) {
        String[] parts = field.strip().split("=", 2);
        fields.put(parts[0], parts[1]);
      }
    }
    String more =
        statements == null || statements.isEmpty()
            ? ""
            : ", " + String.join(", ", statements.split(" "));
    fields.put("statements", "[" + ALL + more + "]");
    return fields;
  }

  /** fields | pose | statements beside the four. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          region=[elbow] | sit |
          region=[shoulder]; type=stretch; dose=sets: 1, reps: 3, hold: 20 s, relax: 10 s, effort: 2..3 | sit | s-breathe s-spread
          region=[hand]; type=isometric; dose=sets: 1, reps: 10, hold: 5 s, relax: 5 s, effort: 2..3 | sit | s-breathe s-numb-fingers
          region=[shoulder]; type=dynamic; dose=sets: 2, reps: 8, tempo: { lift: 2 s, lower: 2 s }, rest: 60 s, effort: 3..4, load: { kind: band, band: band-light }; precautions=[ { tag: latex-allergy, action: leave-out } ] | sit | s-spread s-band-check
          region=[wrist]; type=dynamic; dose=sets: 2, reps: 8, tempo: { lift: 2 s, lower: 2 s }, rest: 60 s, effort: 3..4, load: { kind: mass, mass: 1 kg } | sit | s-numb-fingers s-grip
          region=[ankle]; position=standing; stance=hip | stand | s-calf
          region=[hip]; position=standing; stance=hip; feet=bare; precautions=[ { tag: numb-feet, action: adapt, limits: { feet: shoes }, statement: s-skin-feet } ] | stand | s-skin-feet
          region=[low-back]; position=lying-on-back; lies_on=bed; feet=socks; precautions=[ { tag: pregnant-avoid-lying-flat, action: leave-out } ] | lie | s-saddle s-spread s-rise-wait s-dizzy-stop
          region=[low-back]; position=lying-on-back; lies_on=floor; feet=socks | lie | s-saddle s-spread s-rise-wait s-dizzy-stop s-floor-rise
          region=[low-back]; position=hands-and-knees; lies_on=mat; type=control; dose=sets: 1, reps: 6, hold: 5 s, effort: 2..3 | kneel | s-saddle s-spread s-floor-rise s-kneel-pad s-breathe
          region=[hip]; type=functional; act=stand-up; dose=sets: 2, reps: 8, tempo: { lift: 2 s, lower: 2 s }, rest: 60 s, effort: 3..4, seat_height: 55 cm | sit | s-chair-wall s-rise-wait s-dizzy-stop
          region=[neck]; type=active-range | sit | s-stroke s-dizzy-stop s-spread s-both-hands
          region=[elbow]; type=aerobic; dose=sets: 1, reps: 30, tempo: { lift: 1 s, lower: 1 s }, effort: 3..4 | sit | s-talk
          """)
  void aRightEntryIsSilent(String fields, String pose, @Nullable String statements) {
    assertEquals(List.of(), found(fields(fields, statements), pose));
  }

  /** fields that stay below | the same beyond | what is found then. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          type=stretch; dose=sets: 1, reps: 3, hold: 14 s, effort: 2..3 | type=stretch; dose=sets: 1, reps: 3, hold: 15 s, effort: 2..3 | breathe-on-effort
          type=isometric; dose=sets: 1, reps: 3, hold: 4 s, effort: 2..4 | type=isometric; dose=sets: 1, reps: 3, hold: 4 s, effort: 2..5 | breathe-on-effort
          type=balance; position=standing; stance=hip; dose=sets: 1, reps: 3, hold: 30 s, effort: 2..4 | type=balance; position=standing; stance=tandem; dose=sets: 1, reps: 3, hold: 30 s, effort: 2..4 | support-when-unsteady
          position=lying-on-back; lies_on=bed | position=lying-on-back; lies_on=mat | down-on-the-floor
          feet=socks | feet=socks; position=standing | socks-standing
          region=[hip]; position=standing | region=[knee]; position=standing | calf-clot-sign
          region=[knee] | region=[knee]; position=standing | knee-may-give-way
          do=Keep your eyes open.; position=standing | do=Close your eyes.; position=standing | harder-balance
          do=Do not close your eyes.; position=standing | harder=Shut your eyes.; position=standing | harder-balance
          do=Close your eyes. | easier=Close your eyes.; position=standing | harder-balance
          do=Put a cushion on the seat.; position=standing | harder=Stand on a cushion.; position=standing | harder-balance
          do=Kneel on a cushion. | harder=Stand on a pillow.; position=standing | harder-balance
          do=Never do it without holding on.; position=standing; support={ object: rail, need: one-hand } | harder=Do it without holding on.; position=standing; support={ object: rail, need: one-hand } | harder-balance
          do=Let go slowly.; position=standing; support={ object: rail, need: one-hand } | harder=Let go of the rail.; position=standing; support={ object: rail, need: one-hand } | harder-balance
          do=Turn your head slowly. | harder=Turn your head slowly.; position=standing | harder-balance
          do=Keep both feet on the floor.; position=standing | harder=Stand on one leg.; position=standing | support-when-unsteady
          do=Put your feet on the floor. | do=Sit down on the floor. | down-on-the-floor
          do=Look at your hand. | harder=Hold a weight. | weight-in-hand
          do=Put the towel round your foot. | do=Put the band round your foot. | skin-of-the-foot
          do=Roll the towel like a wheel. | do=Warm up with a heat pack. | heat-cold-tape-brace
          do=Tape the sheet to the wall. | do=Tape your thumb first. | heat-cold-tape-brace
          support={ object: chair-back, need: none-needed } | support={ object: chair-back, need: hover } | chair-cannot-slide
          """)
  void nearALimit(String below, String beyond, String expected) {
    Map<String, String> silent = fields(below, "");
    List<String> before = found(silent, poseOf(silent));
    Map<String, String> loud = fields(beyond, "");
    List<String> after = found(loud, poseOf(loud));
    assertFalse(before.contains(expected), () -> "found below: " + before);
    assertTrue(after.contains(expected), () -> "found beyond: " + after);
  }

  private static String poseOf(Map<String, String> fields) {
    String position = fields.getOrDefault("position", "sitting");
    return position.equals("standing") ? "stand" : position.equals("sitting") ? "sit" : "lie";
  }

  /** What the figure shows in the hand or round the foot counts, whatever the fields say. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          props: {ball: {}} | hands holding ball | weight-in-hand | false
          props: {dumbbell: {mass: 1}} | right hand holding dumbbell | weight-in-hand | true
          props: {band: {round: right-foot}} | hands holding band | skin-of-the-foot | true
          props: {band: {}} | hands holding band | skin-of-the-foot | false
          props: {band: {}} | hands holding band | band-whole | true
          """)
  void thingsInTheFigure(String props, String contact, String rule, boolean fires) {
    String pose =
        "base: long-sitting\nview: side\nsupports: {mat: {}}\n"
            + props
            + "\ncontacts: [hips on mat, heels on mat, "
            + contact
            + "]\nangles: {shoulder both: flexion 40, elbow both: flexion 50, hand both: curl 70}\n";
    List<String> found = found(Map.of(), pose);
    assertEquals(fires, found.contains(rule), () -> "found: " + found);
  }

  /** angles of the figure | more fields | whether the rule fires. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          hip right: flexion 87, knee right: flexion 60 | hip-past-limit | false
          hip right: flexion 88, knee right: flexion 60 | hip-past-limit | true
          hip right: adduction 3 | hip-past-limit | false
          hip right: "adduction 20, flexion 20" | hip-past-limit | true
          pelvis: tilt forward 44, hip both: flexion 44 | rise-slowly | false
          pelvis: tilt forward 45, hip both: flexion 45 | rise-slowly | true
          pelvis: tilt forward 30, hip both: flexion 30 | bent-or-turned-spine | false
          pelvis: tilt forward 31, hip both: flexion 31 | bent-or-turned-spine | true
          lumbar: flexion 10, thoracic: flexion 10 | bent-or-turned-spine | false
          lumbar: flexion 11, thoracic: flexion 10 | bent-or-turned-spine | true
          thoracic: turn right 20 | bent-or-turned-spine | false
          thoracic: turn left 21 | bent-or-turned-spine | true
          hip right: flexion 0 | support-when-unsteady | false
          hip right: flexion 30, knee right: flexion 60 | support-when-unsteady | true
          """)
  void theSolvedPose(String angles, String rule, boolean fires) {
    String id = "te-sample";
    MemoryFiles files =
        (MemoryFiles)
            ExampleLibrary.with(
                rule.equals("support-when-unsteady") || rule.equals("rise-slowly")
                    ? List.of()
                    : List.of(new Example.Edit(ExampleFiles.PRECAUTIONS, Example.Edit.WHOLE, "")));
    SampleExercises.in(
        files,
        id,
        Map.of(
            "position",
            "standing",
            "dose",
            "sets: 2, reps: 8, tempo: { lift: 2 s, lower: 2 s }, rest: 60 s, effort: 3..4, load:"
                + " { kind: mass, mass: 1 kg }"));
    boolean lifts = angles.contains("hip right: f") || angles.contains("adduction 20");
    files.with(
        "figures/" + id + ".yaml",
        "pose: "
            + id
            + "\nbase: standing\nview: side\ncontacts: ["
            + (lifts && !angles.contains("flexion 0") ? "left foot" : "feet")
            + " on floor]\nangles: {"
            + angles
            + "}\n");
    List<String> found =
        CHECKER.check(ExampleLibrary.checked(files)).stream()
            .filter(finding -> finding.entry().equals(id))
            .map(Finding::rule)
            .toList();
    assertEquals(fires, found.contains(rule), () -> "found: " + found);
  }
}
