package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The 24 exercises and 4 programmes of the demo library's dose table: start doses as the table
 * prints them, ladders up to the tops it names, with steps of our own between. The rule tables and
 * the stock are the demo's.
 */
final class StarterLibrary {
  /**
   * {@code id; region; aim; type; position and lies_on; sides; dose; steps}, the steps one behind
   * each bar, their numbers and stays added; the first is where one starts, unless a star says so.
   */
  private static final String EXERCISES =
      """
      sh-wall-slide; shoulder; mobility; active-range; standing; both-together; tempo: { lift: 3 s, pause: 1 s, lower: 3 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 2..3; sets: 2, reps: 8 | sets: 2, reps: 10 | sets: 3, reps: 10 | sets: 3, reps: 12
      sh-turnout-hold; shoulder; control; isometric; standing; affected; sets: 1, relax: 5 s, frequency: { per_day: 2, days_per_week: 7, gap: 6 h }; hold: 5 s, reps: 5, effort: 2..3 | *hold: 10 s, reps: 5, effort: 2..3 | hold: 20 s, reps: 5, effort: 3..4 | hold: 30 s, reps: 4, effort: 3..4
      sh-row-band; shoulder, upper-back; strength; dynamic; sitting; both-together; tempo: { lift: 2 s, pause: 1 s, lower: 3 s }, rest: 90 s, frequency: { per_day: 1, days_per_week: 3, rest_day_between: true }, effort: 4..5, load: { kind: band, length_start: 100 cm, length_end: 150 cm }; sets: 2, reps: 10, load.band: band-light | sets: 3, reps: 10, load.band: band-light | sets: 3, reps: 12, load.band: band-light | sets: 3, reps: 8, load.band: band-medium
      sh-lean-swing; shoulder; pain-relief; active-range; leaning; affected; sets: 1, reps: 30, tempo: { lift: 1 s, lower: 1 s }, frequency: { per_day: 3, days_per_week: 7 }, effort: 1..2;
      wr-slow-lower; wrist; strength; dynamic; sitting; affected; sets: 3, reps: 12, tempo: { lift: 1 s, pause: 0 s, lower: 4 s, bottom: 1 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 3..4, load: { kind: mass }; load.mass: 0.5 kg | load.mass: 1 kg | load.mass: 1.5 kg | load.mass: 2 kg
      ha-towel-squeeze; hand; strength; isometric; sitting; affected; sets: 1, relax: 5 s, frequency: { per_day: 2, days_per_week: 7 }, effort: 3..4; reps: 10, hold: 5 s | reps: 10, hold: 8 s | reps: 12, hold: 10 s | reps: 15, hold: 10 s
      ha-finger-bends; hand; mobility; active-range; sitting; affected; sets: 1, hold: 15 s, frequency: { per_day: 3, days_per_week: 7 }, effort: 1..2; reps: 5 | reps: 8 | reps: 10
      wr-arm-stretch; wrist; mobility; stretch; sitting; affected; sets: 1, reps: 3, relax: 10 s, frequency: { per_day: 2, days_per_week: 7 }, effort: 1..3; hold: 20 s | hold: 30 s
      bk-pelvic-rock; low-back; mobility; active-range; lying-on-back bed; midline; sets: 2, tempo: { lift: 2 s, pause: 1 s, lower: 2 s }, rest: 30 s, frequency: { per_day: 2, days_per_week: 7 }, effort: 1..2; reps: 10 | reps: 15 | reps: 20
      bk-bridge; low-back, hip; strength; functional; lying-on-back bed; both-together; tempo: { lift: 2 s, pause: 3 s, lower: 2 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 3..4, load: { kind: part-body }; sets: 2, reps: 8 | sets: 2, reps: 10 | sets: 3, reps: 10 | sets: 3, reps: 12
      bk-reach-kneel; low-back; control; control; hands-and-knees mat; each-in-turn; sets: 1, relax: 3 s, rest: 60 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 3..4; reps: 6, hold: 5 s | reps: 8, hold: 5 s | reps: 8, hold: 8 s | reps: 10, hold: 10 s
      bk-hip-hinge; low-back, hip; function; functional; standing; midline; tempo: { lift: 2 s, pause: 1 s, lower: 3 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 7 }, effort: 2..4; sets: 2, reps: 8 | sets: 2, reps: 10 | sets: 3, reps: 10 | sets: 3, reps: 10, load.kind: mass, load.mass: 3 kg | sets: 3, reps: 10, load.kind: mass, load.mass: 4 kg
      hp-side-raise; hip; strength; dynamic; standing; each-in-turn; tempo: { lift: 2 s, pause: 1 s, lower: 2 s }, rest: 30 s, frequency: { per_day: 1, days_per_week: 3 }, effort: 3..4; sets: 2, reps: 10 | sets: 3, reps: 10 | sets: 3, reps: 12 | sets: 3, reps: 12, load.kind: band, load.band: band-light
      hp-chair-rise; hip, knee; strength; functional; sitting; both-together; tempo: { lift: 2 s, pause: 1 s, lower: 3 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 3..4, load: { kind: part-body, legs: two-legs }; sets: 2, reps: 8, seat_height: 45 cm | sets: 2, reps: 10, seat_height: 45 cm | sets: 3, reps: 10, seat_height: 45 cm | sets: 3, reps: 12, seat_height: 42 cm
      hp-front-stretch; hip; mobility; stretch; half-kneeling mat; each-in-turn; sets: 1, reps: 3, hold: 30 s, relax: 5 s, rest: 20 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 1..3;
      kn-thigh-tighten; knee; strength; isometric; long-sitting bed; affected; sets: 1, reps: 10, relax: 5 s, frequency: { per_day: 3, days_per_week: 7 }, effort: 3..4; hold: 5 s | hold: 8 s | hold: 10 s
      kn-step-up; knee; strength; functional; stepping; affected; tempo: { lift: 2 s, pause: 1 s, lower: 2 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 3 }, effort: 3..4, load: { kind: body }; sets: 2, reps: 8, step_height: 10 cm | sets: 2, reps: 10, step_height: 10 cm | sets: 2, reps: 10, step_height: 15 cm | sets: 3, reps: 10, step_height: 15 cm | sets: 3, reps: 10, step_height: 20 cm
      kn-heel-slide; knee; mobility; active-range; lying-on-back bed; affected; sets: 2, reps: 10, tempo: { lift: 3 s, pause: 0 s, lower: 3 s }, rest: 30 s, frequency: { per_day: 3, days_per_week: 7 }, effort: 1..2; range: { knee: flexion 0..90 deg } | range: { knee: flexion 0..100 deg } | range: { knee: flexion 0..110 deg }
      an-heel-raise; calf, ankle; strength; functional; standing; both-together; tempo: { lift: 2 s, pause: 1 s, lower: 3 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 5 }, effort: 3..4; sets: 2, reps: 10, load.legs: two-legs | sets: 3, reps: 12, load.legs: two-legs | sets: 2, reps: 10, load.legs: up-two-down-one | sets: 3, reps: 12, load.legs: up-two-down-one | sets: 2, reps: 10, load.legs: one-leg | sets: 3, reps: 12, load.legs: one-leg
      an-band-pull; ankle; strength; dynamic; long-sitting bed; affected; sets: 3, tempo: { lift: 2 s, pause: 1 s, lower: 2 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 3 }, effort: 3..4, load: { kind: band, length_end: 130 cm }; reps: 10, load.band: band-light | reps: 12, load.band: band-light | reps: 8, load.band: band-medium
      an-knee-to-wall; ankle; mobility; active-range; standing; affected; sets: 2, reps: 8, tempo: { lift: 2 s, pause: 3 s, lower: 1 s }, rest: 30 s, frequency: { per_day: 1, days_per_week: 7 }, effort: 1..3; range: { ankle: dorsiflexion 0..20 deg } | range: { ankle: dorsiflexion 0..30 deg }
      ba-heel-toe-stand; balance; balance; balance; standing; each-in-turn; sets: 1, reps: 3, relax: 20 s, rest: 20 s, frequency: { per_day: 1, days_per_week: 7 }, effort: 2..4; hold: 20 s, support.need: fingertip, head_movement: false | hold: 30 s, support.need: fingertip, head_movement: false | hold: 30 s, support.need: hover, head_movement: false | hold: 20 s, support.need: hover, head_movement: true
      ba-one-leg-stand; balance; balance; balance; standing; each-in-turn; sets: 1, reps: 3, relax: 20 s, rest: 20 s, frequency: { per_day: 1, days_per_week: 7 }, effort: 2..4; hold: 10 s | hold: 15 s | hold: 20 s | hold: 30 s
      ba-side-steps; balance, hip; balance; balance; standing; each-in-turn; tempo: { lift: 1 s, lower: 1 s }, rest: 60 s, frequency: { per_day: 1, days_per_week: 7 }, effort: 2..4; sets: 2, reps: 10 | sets: 2, reps: 12 | sets: 3, reps: 12 | sets: 3, reps: 12, load.kind: band, load.band: band-light
      """;

  private static final Map<String, String> PROGRAMMES =
      Map.of(
          "pr-knee-stairs",
          """
            - { weeks: 1..2, add: [kn-thigh-tighten, kn-heel-slide] }
            - { weeks: 3..6, add: [hp-chair-rise, kn-step-up, ad-how-much-pain] }
          """,
          "pr-steady",
          """
            - { weeks: 1..4, add: [hp-chair-rise, an-heel-raise, ba-heel-toe-stand, ba-side-steps] }
            - { weeks: 5..8, replace: { ba-heel-toe-stand: ba-one-leg-stand } }
          """,
          "pr-packing-arm",
          """
            - { weeks: 1..12, add: [wr-slow-lower, ha-towel-squeeze, wr-arm-stretch, sh-turnout-hold] }
          """,
          "pr-back-restart",
          """
            - { weeks: 1..2, add: [bk-pelvic-rock, bk-bridge, bk-hip-hinge] }
            - { weeks: 3..6, add: [bk-reach-kneel] }
          """);

  private static final List<String> OF_THE_DEMO =
      List.of("shared/rules/dose-limits.yaml", "shared/bands.yaml", "shared/clinic.yaml");

  private StarterLibrary() {}

  /** The tables alone, without any entry. */
  static MemoryFiles tables() {
    MemoryFiles files = new MemoryFiles();
    Files demo = DiskFiles.at(Path.of("."));
    OF_THE_DEMO.forEach(path -> files.write(path, demo.bytes(path).orElseThrow()));
    return files;
  }

  /** All of it, as files. */
  static MemoryFiles files() {
    MemoryFiles files = tables();
    EXERCISES.lines().forEach(line -> exercise(line, files));
    new TreeMap<>(PROGRAMMES).forEach((id, phases) -> programme(id, phases, files));
    files.with("content/advice/ad-how-much-pain/en.md", ADVICE);
    return files;
  }

  /** All of it, read. */
  static Checked checked(Files files) {
    return Checked.of(files, ExampleLibrary.TODAY);
  }

  /** Path of an exercise. */
  static String path(String id) {
    return "content/exercises/" + id + "/en.md";
  }

  private static void exercise(String line, MemoryFiles files) {
    String[] parts = Arrays.copyOf(line.split("; ?"), 8);
    String[] place = parts[4].split(" ");
    String sides =
        List.of("midline", "both-together").contains(parts[5])
            ? "{ mode: " + parts[5] + " }"
            : "{ mode: " + parts[5] + ", count: per-side }";
    String ladder = parts[7] == null || parts[7].isBlank() ? "" : ladder(parts[7]);
    files.with(
        path(parts[0]),
        """
        ---
        schema: entry/1
        id: %s
        kind: exercise
        region: [%s]
        aim: %s
        type: %s
        position: %s
        %ssides: %s
        figure: %s
        dose:
          duration: 8 wk
          pain: { during_max: 3 }
        %s
        %sreview_due: 2027-05-31
        ---
        # Exercise
        """
            .formatted(
                parts[0],
                parts[1],
                parts[2],
                parts[3],
                place[0],
                place.length > 1 ? "lies_on: " + place[1] + "\n" : "",
                sides,
                parts[0],
                fields(parts[6]),
                ladder));
  }

  /** One line a field, as {@code "a: 1, b: { c: 2 }"} has them. */
  private static String fields(String dose) {
    return Arrays.stream(dose.split(", (?![^{]*})"))
        .map(field -> "  " + field)
        .collect(Collectors.joining("\n"));
  }

  private static String ladder(String steps) {
    String[] each = steps.split(" \\| ");
    StringBuilder lines = new StringBuilder();
    int start = 1;
    for (int n = 1; n <= each.length; n++) {
      String step = each[n - 1];
      start = step.startsWith("*") ? n : start;
      lines.append("    - { n: %d, %s, stay_at_least: 7 d }\n".formatted(n, step.replace("*", "")));
    }
    return """
        ladder:
          start: %d
          steps:
        %s  go_up_when: { all_reps_done_days: 3, pain_at_most: 3, next_morning: settled }
          go_down_unless: { pain_at_most: 5, next_morning: settled }
          who_decides: patient
        """
        .formatted(start, lines);
  }

  private static void programme(String id, String phases, MemoryFiles files) {
    files.with(
        "content/programmes/" + id + "/en.md",
        """
        ---
        schema: programme/1
        id: %s
        kind: programme
        phases:
        %sreview_due: 2027-05-31
        ---
        # Programme
        """
            .formatted(id, phases));
  }

  private static final String ADVICE =
      """
      ---
      schema: entry/1
      id: ad-how-much-pain
      kind: advice
      review_due: 2027-05-31
      ---
      # Soreness
      """;
}
