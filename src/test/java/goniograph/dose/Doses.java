package goniograph.dose;

/** Doses for tests, written as in front matter: {@code "sets: 2, reps: 8, hold: 10 s"}. */
final class Doses {
  private Doses() {}

  static Dose dose(String fields) {
    Dose dose = Dose.NONE;
    for (String field : fields.split(", ")) {
      String[] parts = field.split(": ");
      DoseField key = DoseField.ofKey(parts[0]).orElseThrow();
      dose = dose.with(key, key.type().read(parts[1]).value().orElseThrow());
    }
    return dose;
  }

  /** A tempo as tables give it: lift-pause-lower or lift-pause-lower-bottom, in seconds. */
  static Dose tempo(String digits) {
    DoseField[] parts = {
      DoseField.TEMPO_LIFT, DoseField.TEMPO_PAUSE, DoseField.TEMPO_LOWER, DoseField.TEMPO_BOTTOM
    };
    Dose dose = Dose.NONE;
    String[] seconds = digits.split("-");
    for (int i = 0; i < seconds.length; i++) {
      dose = dose.with(parts[i], parts[i].type().read(seconds[i] + " s").value().orElseThrow());
    }
    return dose;
  }
}
