package goniograph.body;

import static goniograph.body.Joint.ANKLE;
import static goniograph.body.Joint.ELBOW;
import static goniograph.body.Joint.FOREARM;
import static goniograph.body.Joint.HIP;
import static goniograph.body.Joint.KNEE;
import static goniograph.body.Joint.LUMBAR;
import static goniograph.body.Joint.NECK;
import static goniograph.body.Joint.PELVIS;
import static goniograph.body.Joint.SHOULDER;
import static goniograph.body.Joint.THORACIC;
import static goniograph.body.Movement.ABDUCTION;
import static goniograph.body.Movement.DORSIFLEXION;
import static goniograph.body.Movement.FLEXION;
import static goniograph.body.Movement.PRONATION;
import static goniograph.body.Movement.ROTATION;
import static goniograph.body.Movement.TILT;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a pose starts from: how the pelvis lies in the world and the angles nobody has to type. */
public enum BasePosture {
  STANDING(Turn.NONE, standing()),
  SITTING(
      Turn.NONE,
      JointAngles.NONE
          .both(HIP, FLEXION, 76)
          .both(HIP, ABDUCTION, 5)
          .both(KNEE, FLEXION, 88)
          .both(SHOULDER, FLEXION, 14)
          .both(ELBOW, FLEXION, 70)
          .both(FOREARM, PRONATION, 60)
          .with(LUMBAR, FLEXION, 10)
          .with(PELVIS, TILT, -10)),
  LONG_SITTING(
      Turn.NONE,
      JointAngles.NONE
          .both(HIP, FLEXION, 85)
          .with(LUMBAR, FLEXION, 20)
          .both(SHOULDER, FLEXION, -20)
          .both(ELBOW, FLEXION, 4)),
  KNEELING(Turn.NONE, JointAngles.NONE.both(KNEE, FLEXION, 90)),
  /** On the right knee; see {@link #angles(Side)}. */
  HALF_KNEELING(
      Turn.NONE,
      standing()
          .with(KNEE, Side.RIGHT, FLEXION, 90)
          .with(ANKLE, Side.RIGHT, DORSIFLEXION, -45)
          .with(HIP, Side.LEFT, FLEXION, 90)
          .with(KNEE, Side.LEFT, FLEXION, 90)),
  LYING_ON_BACK(
      Turn.aboutZ(90),
      JointAngles.NONE
          .both(SHOULDER, ABDUCTION, 14)
          .both(ELBOW, FLEXION, 6)
          .both(FOREARM, PRONATION, 60)
          .with(THORACIC, FLEXION, -10)),
  LYING_ON_FRONT(Turn.aboutZ(-90), standing()),
  LYING_ON_LEFT_SIDE(new Turn(new Vec(0, 0, 1), new Vec(1, 0, 0), new Vec(0, 1, 0)), lyingOnSide()),
  LYING_ON_RIGHT_SIDE(
      new Turn(new Vec(0, 0, 1), new Vec(-1, 0, 0), new Vec(0, -1, 0)), lyingOnSide()),
  /** The trunk rises 12 degrees to the shoulders: arm and hand are longer than the thigh. */
  HANDS_AND_KNEES(
      Turn.aboutZ(-78),
      JointAngles.NONE
          .both(HIP, FLEXION, 78)
          .both(KNEE, FLEXION, 90)
          .both(SHOULDER, FLEXION, 80)
          .both(ELBOW, FLEXION, 2)
          .both(ANKLE, DORSIFLEXION, -45)
          .with(NECK, FLEXION, -14)),
  LEANING(Turn.NONE, JointAngles.NONE),
  STEPPING(Turn.NONE, JointAngles.NONE);

  private final Turn turn;
  private final JointAngles angles;

  BasePosture(Turn turn, JointAngles angles) {
    this.turn = turn;
    this.angles = angles;
  }

  /** How the pelvis lies in the world before it tilts, bends or turns. */
  public Turn turn() {
    return turn;
  }

  /** The angles a pose starts from. */
  public JointAngles angles() {
    return angles;
  }

  /**
   * The angles a pose starts from that kneels on one knee.
   *
   * @param kneeling the side of that knee; matters to half-kneeling alone
   */
  public JointAngles angles(Side kneeling) {
    return this == HALF_KNEELING && kneeling == Side.LEFT ? angles.mirrored() : angles;
  }

  /** The pose file's word, for instance {@code long-sitting}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The posture a pose file's word names. */
  public static Optional<BasePosture> of(String word) {
    return Arrays.stream(values()).filter(base -> base.word().equals(word)).findFirst();
  }

  /** Left and right swapped. */
  public BasePosture mirrored() {
    return switch (this) {
      case LYING_ON_LEFT_SIDE -> LYING_ON_RIGHT_SIDE;
      case LYING_ON_RIGHT_SIDE -> LYING_ON_LEFT_SIDE;
      default -> this;
    };
  }

  private static JointAngles standing() {
    return JointAngles.NONE
        .both(SHOULDER, ABDUCTION, 9)
        .both(ELBOW, FLEXION, 10)
        .both(HIP, ROTATION, 8)
        .both(HIP, ABDUCTION, 2);
  }

  private static JointAngles lyingOnSide() {
    return JointAngles.NONE.both(HIP, FLEXION, 45).both(KNEE, FLEXION, 80);
  }
}
