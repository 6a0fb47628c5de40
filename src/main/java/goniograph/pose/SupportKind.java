package goniograph.pose;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can carry or steady a body; heights are those of common furniture and may be typed. */
public enum SupportKind {
  FLOOR(0),
  CHAIR(45),
  COUNTER(90),
  WALL(200),
  MAT(1),
  BED(50),
  TABLE(75);

  private final double usualHeightCm;

  SupportKind(double usualHeightCm) {
    this.usualHeightCm = usualHeightCm;
  }

  /** The height of its upper face in cm where the pose names none. */
  public double usualHeightCm() {
    return usualHeightCm;
  }

  /** True where a body lies or sits on it, so that it stands under the body. */
  boolean under() {
    return this == MAT || this == BED;
  }

  /** The author's word. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<SupportKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
