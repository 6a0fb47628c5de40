package goniograph.body;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Joint angles in the words of the trade: 0 is the upright anatomical stance. Degrees, or cm for
 * the movements that shift a joint; see {@link Movement#unit}. A freedom that is not named is 0.
 *
 * @param values the named freedoms, in the order of {@link Freedom}
 */
public record JointAngles(SortedMap<Freedom, Double> values) {
  /** Nothing named: the anatomical stance. */
  public static final JointAngles NONE = new JointAngles(new TreeMap<>());

  public JointAngles {
    values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
  }

  /** Angles from a map. */
  public static JointAngles of(Map<Freedom, Double> values) {
    return new JointAngles(new TreeMap<>(values));
  }

  /** The value of a freedom; 0 where it is not named. */
  public double get(Freedom freedom) {
    return values.getOrDefault(freedom, 0.0);
  }

  /** The value of a freedom of the trunk. */
  public double get(Joint joint, Movement movement) {
    return get(Freedom.of(joint, movement));
  }

  /** The value of a freedom of a limb. */
  public double get(Joint joint, Side side, Movement movement) {
    return get(Freedom.of(joint, side, movement));
  }

  /** These angles with one value more or changed. */
  public JointAngles with(Freedom freedom, double value) {
    SortedMap<Freedom, Double> all = new TreeMap<>(values);
    all.put(freedom, value);
    return new JointAngles(all);
  }

  /** These angles with one value of the trunk changed. */
  public JointAngles with(Joint joint, Movement movement, double value) {
    return with(Freedom.of(joint, movement), value);
  }

  /** These angles with one value of a limb changed. */
  public JointAngles with(Joint joint, Side side, Movement movement, double value) {
    return with(Freedom.of(joint, side, movement), value);
  }

  /** These angles with one value changed on both sides. */
  public JointAngles both(Joint joint, Movement movement, double value) {
    return with(joint, Side.LEFT, movement, value).with(joint, Side.RIGHT, movement, value);
  }

  /** These angles with those of {@code later} laid over them; per movement, the last wins. */
  public JointAngles over(JointAngles later) {
    SortedMap<Freedom, Double> all = new TreeMap<>(values);
    all.putAll(later.values);
    return new JointAngles(all);
  }

  /** In part on the way to {@code end}: 0 here, 1 there; every freedom in a straight line. */
  public JointAngles towards(JointAngles end, double part) {
    SortedMap<Freedom, Double> all = new TreeMap<>();
    over(end).values.keySet().forEach(f -> all.put(f, get(f) * (1 - part) + end.get(f) * part));
    return new JointAngles(all);
  }

  /** Left and right swapped. */
  public JointAngles mirrored() {
    SortedMap<Freedom, Double> all = new TreeMap<>();
    values.forEach(
        (freedom, value) ->
            all.put(freedom.mirrored(), freedom.movement().flipsWithSide() ? -value : value));
    return new JointAngles(all);
  }
}
