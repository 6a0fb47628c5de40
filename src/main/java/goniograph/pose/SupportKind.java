package goniograph.pose;

import goniograph.matter.Spellings;
import java.util.Arrays;
import java.util.Optional;

/**
 * What can carry or steady a body, each with the class that builds it. A new one is a {@link
 * Furniture} and a line here. Heights and thicknesses are those of common furniture, in cm (common
 * practice, no source); the height may be typed.
 */
public enum SupportKind {
  FLOOR(0, new Ground()),
  CHAIR(45, new Chair()),
  STOOL(45, new Stool()),
  COUNTER(90, new Counter()),
  TABLE(75, new Table()),
  WALL(200, new Wall()),
  DOOR_FRAME(205, new DoorFrame()),
  RAIL(90, new Rail()),
  STEP(15, new StairStep()),
  BOX(30, new Crate()),
  MAT(1, new Mat()),
  BED(50, new Bed()),
  CUSHION(6, new Cushion(42, 42)),
  PILLOW(10, new Cushion(40, 60));

  private final double usualHeightCm;
  private final Furniture furniture;

  SupportKind(double usualHeightCm, Furniture furniture) {
    this.usualHeightCm = usualHeightCm;
    this.furniture = furniture;
  }

  /** The height of its upper face in cm where the pose names none, above what it stands on. */
  public double usualHeightCm() {
    return usualHeightCm;
  }

  Furniture furniture() {
    return furniture;
  }

  /** True where a body lies or sits on it, so that it stands under the body. */
  boolean under() {
    return this == MAT || this == BED || lies();
  }

  /** True for what is put on another support: its height is its own thickness. */
  boolean lies() {
    return this == CUSHION || this == PILLOW;
  }

  /** True for what is sat on, so that it usually stands behind the legs. */
  boolean seat() {
    return this == CHAIR || this == STOOL;
  }

  /** The author's word. */
  public String word() {
    return Spellings.word(this);
  }

  static Optional<SupportKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
