package goniograph.body;

import static goniograph.body.Movement.ABDUCTION;
import static goniograph.body.Movement.BEND;
import static goniograph.body.Movement.DORSIFLEXION;
import static goniograph.body.Movement.ENDS;
import static goniograph.body.Movement.FLEXION;
import static goniograph.body.Movement.KNUCKLES;
import static goniograph.body.Movement.MIDDLE;
import static goniograph.body.Movement.PRONATION;
import static goniograph.body.Movement.PROTRACTION;
import static goniograph.body.Movement.RADIAL;
import static goniograph.body.Movement.RAISE;
import static goniograph.body.Movement.ROTATION;
import static goniograph.body.Movement.THUMB;
import static goniograph.body.Movement.TILT;
import static goniograph.body.Movement.TUCK;
import static goniograph.body.Movement.TURN;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The joints an author names, with the movements each can make. Regions of the spine are one. */
public enum Joint {
  PELVIS(false, TILT, BEND, TURN),
  LUMBAR(false, FLEXION, BEND, TURN),
  THORACIC(false, FLEXION, BEND, TURN),
  NECK(false, FLEXION, BEND, TURN),
  HEAD(false, FLEXION, BEND, TURN, TUCK),
  SHOULDER(true, FLEXION, ABDUCTION, ROTATION, RAISE, PROTRACTION),
  ELBOW(true, FLEXION),
  FOREARM(true, PRONATION),
  WRIST(true, FLEXION, RADIAL),
  HAND(true, KNUCKLES, MIDDLE, ENDS, THUMB),
  HIP(true, FLEXION, ABDUCTION, ROTATION),
  KNEE(true, FLEXION),
  ANKLE(true, DORSIFLEXION);

  private final boolean paired;
  private final List<Movement> movements;

  Joint(boolean paired, Movement... movements) {
    this.paired = paired;
    this.movements = List.of(movements);
  }

  /** True where the joint stands on both sides. */
  public boolean paired() {
    return paired;
  }

  /** The movements this joint makes. */
  public List<Movement> movements() {
    return movements;
  }

  /** The author's word, for instance {@code hip}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The joint an author's word names. */
  public static Optional<Joint> of(String word) {
    return Arrays.stream(values()).filter(joint -> joint.word().equals(word)).findFirst();
  }
}
