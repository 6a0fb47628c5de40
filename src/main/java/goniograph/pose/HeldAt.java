package goniograph.pose;

/** Where a thing is: in the hands, or against the body. */
public enum HeldAt {
  HANDS,
  ON_FLOOR,
  ALONG_BACK,
  BETWEEN_KNEES,
  BETWEEN_ANKLES,
  UNDER_HEAD,
  UNDER_KNEES,
  UNDER_RIGHT_KNEE,
  UNDER_LEFT_KNEE,
  UNDER_RIGHT_ARM,
  UNDER_LEFT_ARM;

  /** True where it lies against the body and no hand carries it. */
  boolean onBody() {
    return ordinal() > ALONG_BACK.ordinal();
  }

  HeldAt mirrored() {
    return switch (this) {
      case UNDER_RIGHT_KNEE -> UNDER_LEFT_KNEE;
      case UNDER_LEFT_KNEE -> UNDER_RIGHT_KNEE;
      case UNDER_RIGHT_ARM -> UNDER_LEFT_ARM;
      case UNDER_LEFT_ARM -> UNDER_RIGHT_ARM;
      default -> this;
    };
  }
}
