package goniograph.pose;

/**
 * An elastic band as a pose file asks for it. It runs from hand to hand: straight, round a door
 * anchor ahead, or round the feet.
 *
 * @param from what holds it besides the hands
 * @param heightCm the door anchor's height above the floor; 0 for the height of the chest
 * @param distanceCm horizontally from the hands in the start pose to the door anchor
 */
public record BandWish(From from, double heightCm, double distanceCm) {
  /** What holds a band besides the hands. */
  public enum From {
    HANDS,
    DOOR,
    FEET
  }
}
