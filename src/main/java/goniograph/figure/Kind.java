package goniograph.figure;

import java.util.Optional;

/** The kinds of part that a drawing has. */
enum Kind {
  TRUNK,
  HEAD,
  UPPER_ARM,
  FOREARM,
  HAND,
  THIGH,
  SHANK,
  FOOT,
  SUPPORT,
  WHEEL,
  /** A thing that is held. */
  PROP,
  /** A band once round a part of the body, over it. */
  GRIP;

  /** The part that this one hangs on. */
  Optional<Kind> parent() {
    return switch (this) {
      case HEAD, UPPER_ARM, THIGH -> Optional.of(TRUNK);
      case FOREARM -> Optional.of(UPPER_ARM);
      case HAND -> Optional.of(FOREARM);
      case SHANK -> Optional.of(THIGH);
      case FOOT -> Optional.of(SHANK);
      case TRUNK, SUPPORT, WHEEL, PROP, GRIP -> Optional.empty();
    };
  }

  boolean ofBody() {
    return this != SUPPORT && this != WHEEL && this != PROP && this != GRIP;
  }
}
