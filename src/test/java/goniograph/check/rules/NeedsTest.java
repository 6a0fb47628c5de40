package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Derived;
import goniograph.check.Poses;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.source.MemoryFiles;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The table of the demo library's 24 exercises: what each needs beside the four statements that all
 * carry, over its whole ladder. The needs were written down by hand from the rules, before any
 * code; the fields and poses are what the table says of each exercise, as far as rules ask for it.
 */
class NeedsTest {
  private static final Set<String> ALL_CARRY =
      Set.of("s-chest", "s-pain-ease", "s-morning", "s-worse");

  private static final String HOLD =
      "sets: 1, reps: 5, effort: 2..4, relax: 5 s, rest: 20 s, hold: ";
  private static final String MOVE =
      "sets: 2, reps: 8, effort: 3..4, rest: 60 s, tempo: { lift: 2 s, pause: 1 s, lower: 3 s }";

  private static final Map<String, String> POSES =
      Map.of(
          "stand", "contacts: [feet on floor]\n",
          "lean",
              "contacts: [feet on floor]\nangles: {pelvis: tilt forward 60, hip both: flexion 60}\n",
          "hinge",
              "contacts: [feet on floor]\nstart: {}\n"
                  + "end: {pelvis: tilt forward 45, hip both: flexion 55, knee both: flexion 15}\n",
          "lift",
              "supports: {counter: {side: left, height: 90, distance: 14}}\n"
                  + "contacts: [left foot on floor]\nstart: {}\nend: {hip right: abduction 25}\n",
          "heels",
              "supports: {counter: {side: left, height: 90, distance: 14}}\n"
                  + "contacts: [toes on floor]\nangles: {ankle both: plantarflexion 30}\n");

  /** id | fields, one a semicolon | dose: hold N s, move, or as typed | pose | needs. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          sh-wall-slide    | region=[shoulder]; position=standing; stance=hip | move | stand | s-spread
          sh-turnout-hold  | region=[shoulder]; type=isometric; position=standing; stance=hip | 30 s | stand | s-breathe s-spread
          sh-row-band      | region=[shoulder, upper-back]; type=dynamic | move; effort: 4..5; load: { kind: band, band: band-light } | - | s-band-check s-breathe s-spread
          sh-lean-swing    | region=[shoulder]; position=leaning | move | lean | s-spread s-rise-wait s-dizzy-stop
          wr-slow-lower    | region=[wrist]; type=dynamic | move; load: { kind: mass, mass: 0.5 kg } | - | s-grip s-numb-fingers
          ha-towel-squeeze | region=[hand]; type=isometric | 10 s | - | s-breathe s-numb-fingers
          ha-finger-bends  | region=[hand] | 3 s | - | s-numb-fingers
          wr-arm-stretch   | region=[wrist]; type=stretch | 20 s | - | s-breathe s-numb-fingers
          bk-pelvic-rock   | region=[low-back]; position=lying-on-back; lies_on=bed | move | - | s-saddle s-spread s-rise-wait s-dizzy-stop
          bk-bridge        | region=[low-back]; position=lying-on-back; lies_on=bed; type=dynamic | move | - | s-saddle s-spread s-rise-wait s-dizzy-stop
          bk-reach-kneel   | region=[low-back]; position=hands-and-knees; lies_on=mat; type=control | 10 s | - | s-breathe s-floor-rise s-kneel-pad s-saddle s-spread
          bk-hip-hinge     | region=[low-back]; position=standing; stance=hip | move | hinge | s-saddle s-spread s-rise-wait s-dizzy-stop
          bk-hip-hinge-top | region=[low-back]; position=standing; stance=hip | move; load: { kind: mass, mass: 4 kg } | hinge | s-saddle s-spread s-rise-wait s-dizzy-stop s-grip
          hp-side-raise    | region=[hip]; position=standing; stance=hip | move | lift | s-support s-fall s-fall-hurt
          hp-side-raise-top| region=[hip]; position=standing; stance=hip | move; load: { kind: band, band: band-light } | lift | s-support s-fall s-fall-hurt s-band-check
          hp-chair-rise    | region=[hip]; type=functional; act=stand-up | move; seat_height: 45 cm | - | s-chair-wall s-rise-wait s-dizzy-stop
          hp-front-stretch | region=[hip]; type=stretch; position=half-kneeling; lies_on=mat; support={ object: chair-back, need: one-hand } | 30 s | - | s-breathe s-floor-rise s-kneel-pad s-chair-wall
          kn-thigh-tighten | region=[knee]; type=isometric; position=long-sitting; lies_on=bed | 10 s | - | s-breathe s-calf
          kn-step-up       | region=[knee]; type=functional; position=stepping | move; step_height: 10 cm | - | s-support s-fall s-fall-hurt s-talk s-give-way s-calf
          kn-heel-slide    | region=[knee]; position=lying-on-back; lies_on=bed | move | - | s-calf s-rise-wait s-dizzy-stop
          an-heel-raise    | region=[calf]; type=dynamic; position=standing; stance=hip | move | heels | s-support s-fall s-fall-hurt s-calf
          an-band-pull     | region=[ankle]; type=dynamic; position=long-sitting; lies_on=bed | move; load: { kind: band, band: band-light } | - | s-band-check s-skin-feet s-calf
          an-knee-to-wall  | region=[ankle]; position=standing; stance=stride | move | stand | s-calf
          ba-heel-toe-stand| region=[balance]; type=balance; position=standing; stance=tandem | 20 s | stand | s-support s-fall s-fall-hurt
          ba-heel-toe-top  | region=[balance]; type=balance; position=standing; stance=tandem; head_movement=true | 20 s | stand | s-support s-fall s-fall-hurt s-helper s-dizzy-stop
          ba-one-leg-stand | region=[balance]; type=balance; position=standing; stance=one-leg | 30 s | stand | s-support s-fall s-fall-hurt
          ba-side-steps    | region=[balance]; type=balance; position=standing; stance=hip | move | lift | s-support s-fall s-fall-hurt
          ba-side-steps-top| region=[balance]; type=balance; position=standing; stance=hip | move; load: { kind: band, band: band-light } | lift | s-support s-fall s-fall-hurt s-band-check
          """)
  void needs(String id, String fields, String dose, String pose, String needs) {
    Map<String, String> laidOver = new LinkedHashMap<>();
    for (String field : fields.split(";")) {
      String[] parts = field.strip().split("=", 2);
      laidOver.put(parts[0], parts[1]);
    }
    laidOver.put("dose", dose(dose));
    MemoryFiles files = (MemoryFiles) ExampleLibrary.with(List.of());
    SampleExercises.in(files, id, laidOver);
    if (!pose.equals("-")) {
      files.with(
          "figures/" + id + ".yaml",
          "pose: " + id + "\nbase: standing\nview: side\n" + POSES.get(pose));
    }
    Library library = Library.read(files).library();
    Poses poses = Poses.of(library);
    Exercise exercise = library.exercise(id).orElseThrow();
    assertTrue(pose.equals("-") || poses.facts(exercise.start()).isPresent(), "the pose is solved");
    Set<String> derived =
        new TreeSet<>(Derived.of(library, poses, exercise, exercise.start()).statements());
    derived.removeAll(ALL_CARRY);
    assertEquals(
        Arrays.stream(needs.split(" ")).collect(Collectors.toCollection(TreeSet::new)), derived);
  }

  private static String dose(String typed) {
    String[] parts = typed.split(";", 2);
    String first = parts[0].equals("move") ? MOVE : HOLD + parts[0];
    String more = parts.length == 1 ? "" : parts[1].replace(";", ",");
    return (more.contains("effort:") ? first.replaceAll("effort: [^,]*, ", "") : first)
        + (more.isEmpty() ? "" : "," + more);
  }
}
