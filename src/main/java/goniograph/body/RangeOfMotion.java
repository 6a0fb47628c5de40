package goniograph.body;

import static goniograph.body.Joint.ANKLE;
import static goniograph.body.Joint.ELBOW;
import static goniograph.body.Joint.FOREARM;
import static goniograph.body.Joint.HAND;
import static goniograph.body.Joint.HEAD;
import static goniograph.body.Joint.HIP;
import static goniograph.body.Joint.KNEE;
import static goniograph.body.Joint.LUMBAR;
import static goniograph.body.Joint.NECK;
import static goniograph.body.Joint.SHOULDER;
import static goniograph.body.Joint.THORACIC;
import static goniograph.body.Joint.WRIST;
import static goniograph.body.Movement.ABDUCTION;
import static goniograph.body.Movement.BEND;
import static goniograph.body.Movement.DORSIFLEXION;
import static goniograph.body.Movement.ENDS;
import static goniograph.body.Movement.FLEXION;
import static goniograph.body.Movement.KNUCKLES;
import static goniograph.body.Movement.MIDDLE;
import static goniograph.body.Movement.PRONATION;
import static goniograph.body.Movement.RADIAL;
import static goniograph.body.Movement.ROTATION;
import static goniograph.body.Movement.THUMB;
import static goniograph.body.Movement.TURN;

import java.util.List;
import java.util.Optional;

/**
 * How far joints go: norms of an age, outside which a pose deserves a look, and hard limits that no
 * pose passes. Every row says in words where it comes from; rows that say "from memory" or "common
 * practice" have not been seen in a source.
 */
public final class RangeOfMotion {
  private static final String AAOS =
      "AAOS, in Norkin and White, Measurement of Joint Motion, table A.1";
  private static final String AAOS_MEMORY = "AAOS, from memory, not checked";
  private static final String WALKER =
      "Walker, 65 to 85 years, in Norkin and White, Measurement of Joint Motion, table A.1";
  private static final String OLDER_WOMEN = "means of older women, PMC5144495, table 3";
  private static final String VASAVADA =
      "Vasavada, Li and Delp 1998, Spine 23:412, half of each total range";
  private static final String SOUCIE =
      "means of the more mobile sex, 2 to 8 years, Soucie 2011, Haemophilia 17:500";
  private static final String AMA_MEMORY = "AMA, from memory, not checked";
  private static final String PRACTICE = "common practice, no source";

  private record Row(Joint joint, Movement movement, MotionRange range) {}

  private static final List<Row> ADULT_NORMS =
      List.of(
          row(SHOULDER, FLEXION, -60, 180, AAOS),
          row(SHOULDER, ABDUCTION, -50, 180, AAOS + "; adduction: " + PRACTICE),
          row(SHOULDER, ROTATION, -70, 90, AAOS),
          row(ELBOW, FLEXION, 0, 150, AAOS),
          row(FOREARM, PRONATION, -80, 80, AAOS),
          row(WRIST, FLEXION, -70, 80, AAOS),
          row(WRIST, RADIAL, -30, 20, AAOS),
          row(HIP, FLEXION, -20, 120, AAOS_MEMORY + "; extension: " + PRACTICE),
          row(HIP, ABDUCTION, -30, 45, AAOS_MEMORY),
          row(HIP, ROTATION, -45, 45, AAOS_MEMORY),
          row(KNEE, FLEXION, 0, 135, AAOS_MEMORY),
          row(ANKLE, DORSIFLEXION, -50, 20, AAOS_MEMORY),
          row(NECK, FLEXION, -41, 41, VASAVADA),
          row(NECK, BEND, -33.5, 33.5, VASAVADA),
          row(NECK, TURN, -27.5, 27.5, VASAVADA),
          row(HEAD, FLEXION, -20, 20, VASAVADA),
          row(HEAD, BEND, -6.5, 6.5, VASAVADA),
          row(HEAD, TURN, -38.5, 38.5, VASAVADA),
          row(LUMBAR, FLEXION, -25, 60, AMA_MEMORY),
          row(LUMBAR, BEND, -25, 25, AMA_MEMORY),
          row(HAND, KNUCKLES, -45, 90, AAOS_MEMORY),
          row(HAND, MIDDLE, 0, 100, AAOS_MEMORY),
          row(HAND, ENDS, 0, 90, AAOS_MEMORY));

  /** The published means of hip and knee flexion, 140.8 and 152.6, end at the hard limits. */
  private static final List<Row> CHILD_NORMS =
      List.of(
          row(HIP, FLEXION, -20, 125, SOUCIE + "; cut at the hard limits"),
          row(KNEE, FLEXION, -5, 140, SOUCIE + "; cut at the hard limits"),
          row(ANKLE, DORSIFLEXION, -50, 24.8, SOUCIE + "; plantarflexion: " + AAOS_MEMORY));

  private static final List<Row> OLDER_NORMS =
      List.of(
          row(SHOULDER, FLEXION, -44, 165, WALKER),
          row(SHOULDER, ABDUCTION, -50, 165, WALKER + "; adduction: " + PRACTICE),
          row(SHOULDER, ROTATION, -62, 81, WALKER),
          row(ELBOW, FLEXION, 0, 143, WALKER),
          row(FOREARM, PRONATION, -74, 71, WALKER),
          row(WRIST, FLEXION, -63, 64, WALKER),
          row(WRIST, RADIAL, -26, 19, WALKER),
          row(HIP, FLEXION, -16.8, 122.6, OLDER_WOMEN),
          row(KNEE, FLEXION, 0, 127.6, OLDER_WOMEN),
          row(
              ANKLE,
              DORSIFLEXION,
              -50,
              17.7,
              OLDER_WOMEN + "; plantarflexion cut at the hard limit"));

  private static final List<Row> HARD =
      List.of(
          row(SHOULDER, FLEXION, -80, 180, PRACTICE),
          row(SHOULDER, ABDUCTION, -75, 180, PRACTICE),
          row(SHOULDER, ROTATION, -100, 120, PRACTICE),
          row(ELBOW, FLEXION, -5, 150, PRACTICE),
          row(FOREARM, PRONATION, -100, 100, PRACTICE),
          row(WRIST, FLEXION, -90, 95, PRACTICE),
          row(WRIST, RADIAL, -45, 30, PRACTICE),
          row(HIP, FLEXION, -20, 125, PRACTICE),
          row(HIP, ABDUCTION, -40, 60, PRACTICE),
          row(HIP, ROTATION, -60, 65, PRACTICE),
          row(KNEE, FLEXION, -5, 140, PRACTICE),
          row(ANKLE, DORSIFLEXION, -50, 25, PRACTICE),
          row(LUMBAR, FLEXION, -45, 65, PRACTICE),
          row(LUMBAR, BEND, -30, 30, PRACTICE),
          row(LUMBAR, TURN, -20, 20, PRACTICE),
          row(THORACIC, FLEXION, -35, 50, PRACTICE),
          row(THORACIC, BEND, -40, 40, PRACTICE),
          row(THORACIC, TURN, -50, 50, PRACTICE),
          row(NECK, FLEXION, -65, 65, PRACTICE),
          row(NECK, BEND, -50, 50, PRACTICE),
          row(NECK, TURN, -65, 65, PRACTICE),
          row(HEAD, FLEXION, -40, 40, PRACTICE),
          row(HEAD, BEND, -20, 20, PRACTICE),
          row(HEAD, TURN, -60, 60, PRACTICE),
          row(HAND, KNUCKLES, -60, 100, PRACTICE),
          row(HAND, MIDDLE, -20, 120, PRACTICE),
          row(HAND, ENDS, -30, 95, PRACTICE),
          row(HAND, THUMB, 0, 90, PRACTICE));

  /** Dorsiflexion under the body's weight; common practice, no source. */
  private static final MotionRange LOADED_ANKLE =
      new MotionRange(-50, 45, PRACTICE + " (bearing weight)");

  private RangeOfMotion() {}

  /**
   * The range of an age, where one is known. Children and older people take adult rows where no row
   * of their own is known; a foot that bears weight has no published norm.
   */
  public static Optional<MotionRange> norm(Freedom freedom, AgeGroup age, boolean bearing) {
    if (freedom.joint() == ANKLE && bearing) {
      return Optional.empty();
    }
    return find(ownNorms(age), freedom).or(() -> find(ADULT_NORMS, freedom));
  }

  private static List<Row> ownNorms(AgeGroup age) {
    return switch (age) {
      case CHILD -> CHILD_NORMS;
      case ADULT -> ADULT_NORMS;
      case OLDER -> OLDER_NORMS;
    };
  }

  /**
   * The range no pose may leave, where there is one.
   *
   * @param bearing true where the foot of that side bears weight; matters to the ankle alone
   */
  public static Optional<MotionRange> hard(Freedom freedom, boolean bearing) {
    return freedom.joint() == ANKLE && bearing ? Optional.of(LOADED_ANKLE) : find(HARD, freedom);
  }

  private static Row row(Joint joint, Movement movement, double low, double high, String source) {
    return new Row(joint, movement, new MotionRange(low, high, source));
  }

  private static Optional<MotionRange> find(List<Row> rows, Freedom freedom) {
    return rows.stream()
        .filter(row -> row.joint == freedom.joint() && row.movement == freedom.movement())
        .map(Row::range)
        .findFirst();
  }
}
