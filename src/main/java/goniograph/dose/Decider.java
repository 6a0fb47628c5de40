package goniograph.dose;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Who decides on going up. */
public enum Decider {
  PATIENT,
  THERAPIST;

  /** Its word in front matter. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The decider of a word. */
  public static Optional<Decider> ofWord(String word) {
    return Arrays.stream(values()).filter(decider -> decider.word().equals(word)).findFirst();
  }
}
