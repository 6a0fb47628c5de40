package goniograph.pose;

import goniograph.body.Chain;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Statics;
import goniograph.body.Vec;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Finds which parts of a solved body hang free, and what they and held things ask of joints. */
final class LoadFinder {
  private final PoseFile pose;
  private final Moment moment;
  private final List<Contact> contacts;
  private final Skeleton body;

  LoadFinder(PoseFile pose, Moment moment, List<Contact> contacts) {
    this.pose = pose;
    this.moment = moment;
    this.contacts = contacts;
    this.body = moment.skeleton();
  }

  /** The moments under the mass that the pose types. */
  Loads loads() {
    Map<Chain, Map<Side, Demand>> demands = new EnumMap<>(Chain.class);
    for (Chain chain : Chain.values()) {
      Map<Side, Demand> sides = new EnumMap<>(Side.class);
      List<Side> all = chain.paired() ? List.of(Side.values()) : List.of(Side.RIGHT);
      all.stream()
          .filter(side -> free(chain, side))
          .forEach(side -> sides.put(side, demand(chain, side)));
      demands.put(chain, sides);
    }
    double typed =
        moment.props().stream()
            .flatMap(prop -> prop.massKg().stream())
            .mapToDouble(kg -> kg)
            .max()
            .orElse(0);
    return new Loads(demands, Load.mass(typed));
  }

  private Demand demand(Chain chain, Side side) {
    return new Demand(
        chain.ownMoment(body, side),
        pulled(chain, side, prop -> !prop.elastic()).times(Statics.GRAVITY),
        pulled(chain, side, Prop::elastic),
        chain.flexing(body, side));
  }

  /** The moment of all pulls on a chain, each for one newton. */
  private Vec pulled(Chain chain, Side side, Predicate<Prop> which) {
    List<Statics.Force> forces =
        moment.props().stream()
            .filter(which)
            .flatMap(prop -> prop.pulls().stream())
            .filter(pull -> chain.holds(pull.limb(), pull.side(), side))
            .map(pull -> new Statics.Force(Chain.metres(body, pull.at()), pull.share()))
            .toList();
    return chain.moment(body, side, forces);
  }

  private boolean free(Chain chain, Side side) {
    return switch (chain) {
      case NECK -> none(LoadFinder::aboveHips);
      case LOW_BACK -> none(LoadFinder::aboveHips) && none(Part::ofArm);
      case SHOULDER -> none(Part::ofArm, side);
      case HIP -> none(part -> part.ofFoot() || part == Part.KNEE, side) && !thighOnSeat();
      case KNEE -> none(Part::ofFoot, side);
    };
  }

  private static boolean aboveHips(Part part) {
    return part == Part.HEAD || part.ofTrunk() && part != Part.HIPS;
  }

  /** Who sits upright lays the thighs on the seat. */
  private boolean thighOnSeat() {
    boolean upright = body.pelvis().axes().y().y() > .5;
    return upright && !none(part -> part == Part.HIPS);
  }

  private boolean none(Predicate<Part> part) {
    return contacts.stream().filter(this::bears).map(Contact::part).noneMatch(part);
  }

  private boolean none(Predicate<Part> part, Side side) {
    return contacts.stream()
        .filter(this::bears)
        .filter(contact -> contact.side().filter(side::equals).isPresent())
        .map(Contact::part)
        .noneMatch(part);
  }

  /** What is held hangs on the hand; only what stands on the floor carries it. */
  private boolean bears(Contact contact) {
    return contact.manner() != Contact.Manner.HOLDING
        || pose.props().stream()
            .anyMatch(prop -> prop.onFloor() && prop.word().equals(contact.target()));
  }
}
