package goniograph.pose;

import goniograph.body.Chain;
import goniograph.body.JointLoad;
import goniograph.body.Side;
import goniograph.body.Statics;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Static moments in Nm at the joints that a free part hangs on; empty where the part carries a
 * contact, because then nobody knows who carries what. Estimates for comparing poses, never a
 * statement about a patient.
 */
public final class Loads {
  private final Map<Chain, Map<Side, Demand>> demands;
  private final Load load;

  /**
   * Moments under a load.
   *
   * @param demands the free chains; a chain without sides stands on the right
   */
  Loads(Map<Chain, Map<Side, Demand>> demands, Load load) {
    this.demands = Map.copyOf(demands);
    this.load = load;
  }

  /** The same pose under another load. */
  public Loads under(Load other) {
    return new Loads(demands, other);
  }

  /** The load they are worked out for: the mass that the pose types, unless another was asked. */
  public Load load() {
    return load;
  }

  /** Head and neck about C7, flexing positive. */
  public Optional<Double> neck() {
    return middle(Chain.NECK);
  }

  /** The neck extensors' force in N at the stated lever arm. */
  public Optional<Double> neckMuscleN() {
    return neck().map(nm -> Statics.muscleForce(nm, JointLoad.NECK_LEVER_ARM));
  }

  /** All above the pelvis about L5-S1, flexing positive. */
  public Optional<Double> lowBack() {
    return middle(Chain.LOW_BACK);
  }

  /** Each free arm about its shoulder. */
  public Map<Side, Double> shoulder() {
    return sides(Chain.SHOULDER);
  }

  /** Each free leg about its hip. */
  public Map<Side, Double> hip() {
    return sides(Chain.HIP);
  }

  /** Each free lower leg about its knee. */
  public Map<Side, Double> knee() {
    return sides(Chain.KNEE);
  }

  /** The joints whose part is carried, for instance {@code low back} or {@code hip left}. */
  public List<String> carried() {
    List<String> names = new ArrayList<>();
    for (Chain chain : Chain.values()) {
      String name = Spellings.word(chain).replace('-', ' ');
      List<Side> sides = chain.paired() ? List.of(Side.values()) : List.of(Side.RIGHT);
      sides.stream()
          .filter(side -> !sides(chain).containsKey(side))
          .map(side -> chain.paired() ? name + " " + Spellings.word(side) : name)
          .forEach(names::add);
    }
    return names;
  }

  private Optional<Double> middle(Chain chain) {
    return Optional.ofNullable(sides(chain).get(Side.RIGHT));
  }

  private Map<Side, Double> sides(Chain chain) {
    Map<Side, Double> moments = new TreeMap<>();
    demands.getOrDefault(chain, Map.of()).forEach((side, d) -> moments.put(side, d.nm(load)));
    return moments;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Loads that && demands.equals(that.demands) && load.equals(that.load);
  }

  @Override
  public int hashCode() {
    return 31 * demands.hashCode() + load.hashCode();
  }

  @Override
  public String toString() {
    return "Loads[" + demands + ", " + load + "]";
  }
}
