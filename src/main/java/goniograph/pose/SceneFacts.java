package goniograph.pose;

import goniograph.body.AgeGroup;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.MotionRange;
import goniograph.body.Movement;
import goniograph.body.RangeOfMotion;
import goniograph.body.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What rules may ask of a solved pose. Everything is read from the solved bodies, nothing from what
 * was typed.
 *
 * @param pose the pose's id
 * @param keys the key frames in order
 * @param motion about nine moments over the whole movement, key frames' moments among them; one
 *     where nothing moves
 * @param differences typed angles that the contacts changed by more than {@link
 *     TypedDifference#TOLD}
 * @param supportDistanceCm from the outline of trunk and legs in the first key frame to each
 *     support's near edge, by support word; supports under the body left out
 * @param seatHeightCm the height of what is sat on, where someone sits
 * @param stepHeightCm the height of the highest thing a foot stands on, above the lowest; empty
 *     where the feet stand on one level
 */
public record SceneFacts(
    String pose,
    List<MomentFacts> keys,
    List<MomentFacts> motion,
    List<TypedDifference> differences,
    SortedMap<String, Double> supportDistanceCm,
    Optional<Double> seatHeightCm,
    Optional<Double> stepHeightCm) {
  public SceneFacts {
    keys = List.copyOf(keys);
    motion = List.copyOf(motion);
    differences = List.copyOf(differences);
    supportDistanceCm = Collections.unmodifiableSortedMap(new TreeMap<>(supportDistanceCm));
  }

  /** Key frames and the moments between. */
  public List<MomentFacts> all() {
    List<MomentFacts> all = new ArrayList<>(keys);
    motion.stream().filter(moment -> moment.name().isEmpty()).forEach(all::add);
    return all;
  }

  /**
   * When a moment is, in the pose file's words: {@code at `end`}, {@code between `start` and
   * `via`}; empty where nothing moves.
   */
  public String when(MomentFacts moment) {
    if (keys.size() == 1) {
      return "";
    }
    double place = (double) motion.indexOf(moment) * (keys.size() - 1) / (motion.size() - 1);
    int before = Math.max(0, Math.min((int) place, keys.size() - 2));
    return moment.name().isEmpty()
        ? "between " + key(keys.get(before)) + " and " + key(keys.get(before + 1))
        : "at " + key(moment);
  }

  private static String key(MomentFacts moment) {
    return "`" + moment.name().replaceFirst("^via-1$", "via").replace("via-", "via ") + "`";
  }

  /** Each freedom's smallest and largest value over the whole movement. */
  public SortedMap<Freedom, Extreme> extremes() {
    SortedMap<Freedom, Extreme> extremes = new TreeMap<>();
    for (MomentFacts moment : all()) {
      moment
          .angles()
          .values()
          .forEach(
              (freedom, value) ->
                  extremes.merge(
                      freedom, new Extreme(value, value), (old, now) -> old.with(value)));
    }
    return extremes;
  }

  /** A freedom's smallest and largest value; every freedom but the chin's tuck has them. */
  public Optional<Extreme> extreme(Freedom freedom) {
    return Optional.ofNullable(extremes().get(freedom));
  }

  /** How far a support's near edge is from the body in the first key frame, in cm. */
  public Optional<Double> distanceCm(String support) {
    return Optional.ofNullable(supportDistanceCm.get(support));
  }

  /** The largest flexion of either hip over the whole movement, in degrees. */
  public double hipFlexionMax() {
    return Stream.of(Side.values())
        .flatMap(side -> extreme(Freedom.of(Joint.HIP, side, Movement.FLEXION)).stream())
        .mapToDouble(Extreme::high)
        .max()
        .orElse(0);
  }

  /** The largest value of a fact over the whole movement. */
  public double most(ToDoubleFunction<MomentFacts> fact) {
    return all().stream().mapToDouble(fact).max().orElse(0);
  }

  /** True where at some moment exactly one foot bears. */
  public boolean standsOnOneFoot() {
    return all().stream().anyMatch(m -> m.bears(Side.LEFT) != m.bears(Side.RIGHT));
  }

  /** True where at some moment a heel is raised and its ball bears. */
  public boolean raisesHeels() {
    return all().stream().anyMatch(m -> m.feet().containsValue(FootState.HEEL_RAISED));
  }

  /** The smallest balance margin in cm over the key frames; empty where nothing bears. */
  public Optional<Double> marginCm(boolean withHands) {
    return keys.stream()
        .map(m -> withHands ? m.marginCm() : m.marginWithoutHandsCm())
        .flatMap(Optional::stream)
        .min(Double::compare);
  }

  /**
   * Solved angles outside the age's norms or the hard limits: for each freedom the gravest,
   * farthest one over the whole movement.
   */
  public List<RangeBreach> breaches(AgeGroup age) {
    SortedMap<Freedom, RangeBreach> worst = new TreeMap<>();
    for (MomentFacts moment : all()) {
      moment
          .angles()
          .values()
          .forEach(
              (freedom, value) ->
                  breach(moment, freedom, value, age)
                      .ifPresent(found -> worst.merge(freedom, found, SceneFacts::worse)));
    }
    return List.copyOf(worst.values());
  }

  private static Optional<RangeBreach> breach(
      MomentFacts moment, Freedom freedom, double value, AgeGroup age) {
    boolean bearing = freedom.side().filter(moment::bears).isPresent();
    Optional<RangeBreach> hard =
        RangeOfMotion.hard(freedom, bearing)
            .filter(range -> !range.holds(value))
            .map(range -> new RangeBreach(moment.name(), freedom, value, range, true));
    return hard.or(
        () ->
            RangeOfMotion.norm(freedom, age, bearing)
                .filter(range -> !range.holds(value))
                .map(range -> new RangeBreach(moment.name(), freedom, value, range, false)));
  }

  private static RangeBreach worse(RangeBreach a, RangeBreach b) {
    if (a.hard() != b.hard()) {
      return a.hard() ? a : b;
    }
    return excess(b) > excess(a) ? b : a;
  }

  private static double excess(RangeBreach breach) {
    MotionRange range = breach.range();
    return Math.max(range.low() - breach.value(), breach.value() - range.high());
  }
}
