package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.source.Span;

/**
 * A typed angle that the contacts changed.
 *
 * @param frame the key frame's name
 * @param freedom which joint and movement
 * @param typed the typed value
 * @param solved the solved value
 * @param explained true where the limb has a contact of its own, which explains the change
 * @param at the place of the typed angle
 */
public record TypedDifference(
    String frame, Freedom freedom, double typed, double solved, boolean explained, Span at) {
  /** Differences up to this many degrees (or cm) are not told. */
  public static final double TOLD = 5;

  /** Differences above this are grave. */
  public static final double GRAVE = 15;

  /** How far the solved value is from the typed one. */
  public double size() {
    return Math.abs(solved - typed);
  }
}
