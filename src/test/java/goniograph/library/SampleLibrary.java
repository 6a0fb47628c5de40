package goniograph.library;

import goniograph.source.MemoryFiles;

/** A small library that is right, to be made wrong in one place by each test. */
final class SampleLibrary {
  static final String ENTRY_PATH = "content/exercises/sh-turnout-hold/en.md";

  static final String ENTRY =
      """
      ---
      schema: entry/1
      id: sh-turnout-hold
      kind: exercise
      region: [shoulder]
      aim: control
      type: isometric
      position: standing
      stance: hip
      feet: shoes
      support: { need: none-needed }
      sides: { mode: affected, count: per-side, ask_at_print: true }
      figure: sh-turnout-hold
      range: { shoulder: external rotation 0..10 deg, elbow: [flexion 85..95 deg] }
      dose:
        sets: 1
        relax: 5 s
        frequency: { per_day: 2, days_per_week: 7, gap: 6 h }
        pain: { during_max: 3 }
        duration: 2 wk
      ladder:
        start: 2
        steps:
          - { n: 1, hold: 5 s,  reps: 5, effort: 2..3, stay_at_least: 3 d }
          - { n: 2, hold: 10 s, reps: 5, effort: 2..3, stay_at_least: 3 d, stance: narrow }
          - { n: 3, hold: 20 s, reps: 5, effort: 3..4, support.need: hover }
        go_up_when:     { all_reps_done_days: 3, pain_at_most: 3, next_morning: settled }
        go_down_unless: { pain_at_most: 5, next_morning: settled }
        who_decides: patient
      equipment: [ { id: door-frame }, { id: small-towel, instead: folded-shirt } ]
      supervision: first-time-shown
      precautions:
        - { tag: blood-pressure-not-controlled, action: adapt, limits: { hold: ..5 s, effort: ..3 } }
        - { tag: tendon-repair-shoulder, action: leave-out, override: false }
      statements: [s-breathe, s-chest]
      evidence:
        - { claim: builds-control, kind: consensus, ref: note-14, looked_at: 2026-05-11, certainty: low }
      review_due: 2027-05-31
      ---
      # Outward-turn hold at a door frame
      ## why
      To reach and lift with less ache.
      ## do
      1. Stand close to the door frame, {side.arm} nearest.
      2. {s-breathe}
      ## feel
      Work at the back of the shoulder.
      ## easier
      Press more lightly.
      ## landmark
      elbow touching your side
      """;

  static final String CLINIC =
      """
      name: Quillhaven Community Physiotherapy
      paper: A4
      time_zone: Etc/UTC
      phones: { desk: "+00 0000 0100" }
      hours: { mon-fri: "08:00..17:00" }
      out_of_hours: "+00 0000 0199"
      emergency: "0000"
      languages: [en, ar]
      """;

  static final String STATEMENTS =
      """
      s-breathe: { level: caution, text: "Keep breathing." }
      s-chest: { level: emergency, text: "Chest pain: call {clinic.emergency}." }
      """;

  private SampleLibrary() {}

  static MemoryFiles files() {
    return new MemoryFiles()
        .with(ENTRY_PATH, ENTRY)
        .with("shared/clinic.yaml", CLINIC)
        .with("shared/statements/en.yaml", STATEMENTS);
  }
}
