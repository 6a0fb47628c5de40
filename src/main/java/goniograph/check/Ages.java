package goniograph.check;

import goniograph.body.AgeGroup;
import goniograph.library.Audience;
import goniograph.library.Exercise;

/** Whose norms an exercise is held against. */
public final class Ages {
  /** The published norms of children end at 8 years. */
  private static final int OLDEST_CHILD = 8;

  private Ages() {}

  /** The age group of an exercise's audience; adults where it names none. */
  public static AgeGroup of(Exercise exercise) {
    return exercise
        .audience()
        .map(one -> one.value())
        .map(Ages::of)
        .orElse(AgeGroup.ADULT);
  }

  private static AgeGroup of(Audience audience) {
    return switch (audience.group()) {
      case ADULT -> AgeGroup.ADULT;
      case OLDER -> AgeGroup.OLDER;
      case CHILD ->
          audience.age().orElse(OLDEST_CHILD) <= OLDEST_CHILD ? AgeGroup.CHILD : AgeGroup.ADULT;
    };
  }
}
