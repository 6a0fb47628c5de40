package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.body.MotionRange;

/**
 * A solved angle outside a range.
 *
 * @param frame the key frame's name; "" between key frames
 * @param freedom which joint and movement
 * @param value the farthest value over the whole movement
 * @param range the range it leaves
 * @param hard true for a hard limit, false for a norm of the age
 */
public record RangeBreach(
    String frame, Freedom freedom, double value, MotionRange range, boolean hard) {}
