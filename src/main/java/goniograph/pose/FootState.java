package goniograph.pose;

/** How a foot stands. */
public enum FootState {
  FLAT,
  /** The ball bears and the heel is more than 1 cm higher. */
  HEEL_RAISED,
  /** The heel bears and the ball is more than 1 cm higher. */
  FOREFOOT_RAISED,
  /** More than 1 cm above what is below it. */
  OFF
}
