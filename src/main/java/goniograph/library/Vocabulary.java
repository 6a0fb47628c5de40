package goniograph.library;

import goniograph.matter.Spellings;
import java.util.Arrays;
import java.util.List;

/**
 * The closed vocabularies of front matter. In a file a word is spelt in lower case with hyphens:
 * {@code lying-on-back}; {@link Spellings#word} gives that spelling.
 */
public final class Vocabulary {
  private Vocabulary() {}

  /** A part of the body, or what is practised. */
  public enum Region {
    NECK,
    SHOULDER,
    UPPER_BACK,
    LOW_BACK,
    ELBOW,
    WRIST,
    HAND,
    HIP,
    KNEE,
    CALF,
    ANKLE,
    FOOT,
    BALANCE;

    /** All regions as they are spelt. */
    public static final List<String> WORDS = Arrays.stream(values()).map(Spellings::word).toList();
  }

  /** What an exercise is for. */
  public enum Aim {
    STRENGTH,
    ENDURANCE,
    MOBILITY,
    CONTROL,
    BALANCE,
    PAIN_RELIEF,
    FITNESS,
    FUNCTION
  }

  /** What kind of work it is; decides its dose limits. */
  public enum Type {
    ISOMETRIC,
    DYNAMIC,
    STRETCH,
    ACTIVE_RANGE,
    BALANCE,
    AEROBIC,
    CONTROL,
    FUNCTIONAL,
    BREATHING
  }

  /** The base posture, as in pose files. */
  public enum Position {
    STANDING,
    SITTING,
    LONG_SITTING,
    KNEELING,
    HALF_KNEELING,
    LYING_ON_BACK,
    LYING_ON_FRONT,
    LYING_ON_LEFT_SIDE,
    LYING_ON_RIGHT_SIDE,
    HANDS_AND_KNEES,
    LEANING,
    STEPPING;

    /**
     * Whether something other than the feet or a seat carries the body, so that it must be named.
     */
    public boolean liesOnSomething() {
      return switch (this) {
        case STANDING, SITTING, LEANING, STEPPING -> false;
        default -> true;
      };
    }
  }

  /** What carries a lying or kneeling body. */
  public enum LiesOn {
    BED,
    FLOOR,
    MAT,
    CHAIR
  }

  /** How the feet stand; stride is one foot ahead at hip width. */
  public enum Stance {
    WIDE,
    HIP,
    NARROW,
    TANDEM,
    ONE_LEG,
    STRIDE
  }

  /** Eyes open or closed. */
  public enum Vision {
    OPEN,
    CLOSED
  }

  /** What the feet stand on. */
  public enum Surface {
    FIRM,
    SOFT
  }

  /** What is on the feet. */
  public enum Feet {
    BARE,
    SOCKS,
    SHOES
  }

  /** What the hands do at the support, least first. */
  public enum SupportNeed {
    NONE_NEEDED,
    HOVER,
    FINGERTIP,
    ONE_HAND,
    TWO_HAND
  }

  /** On which side the support stands. */
  public enum SupportSide {
    LEFT,
    RIGHT,
    EITHER
  }

  /** Who must be there, least first. */
  public enum Supervision {
    INDEPENDENT,
    FIRST_TIME_SHOWN,
    HELPER_NEAR,
    CLINIC_ONLY
  }

  /** For whom it is written. */
  public enum AgeGroup {
    ADULT,
    OLDER,
    CHILD
  }

  /** What a precaution does. */
  public enum Action {
    LEAVE_OUT,
    ADAPT,
    ADVISE
  }

  /** What a claim rests on. */
  public enum EvidenceKind {
    TRIAL,
    REVIEW,
    GUIDELINE,
    CONSENSUS,
    CUSTOM
  }

  /** How certain it is. */
  public enum Certainty {
    HIGH,
    MODERATE,
    LOW,
    VERY_LOW
  }

  /** How urgent a statement is, most urgent first. */
  public enum Urgency {
    EMERGENCY,
    CALL_US,
    EASE_OFF,
    CAUTION
  }
}
