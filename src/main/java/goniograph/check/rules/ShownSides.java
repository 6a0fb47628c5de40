package goniograph.check.rules;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.language.SideFinder;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.pose.Contact;
import goniograph.pose.Extreme;
import goniograph.pose.MomentFacts;
import goniograph.pose.Part;
import goniograph.pose.SceneFacts;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which side a figure shows as the one that moves, holds on or stands in front. */
final class ShownSides {
  /** Less than this is not seen as a difference, degrees. */
  private static final double SEEN = 8;

  private static final Set<Joint> ARM = Set.of(Joint.SHOULDER, Joint.ELBOW, Joint.WRIST);
  private static final Set<Joint> LEG = Set.of(Joint.HIP, Joint.KNEE, Joint.ANKLE);

  private final SceneFacts facts;
  private final WordFinder front;
  private final WordFinder behind;
  private final boolean mirrored;

  /**
   * The sides of a scene.
   *
   * @param mirrored whether the sheet shows the pose for the other side
   */
  ShownSides(SceneFacts facts, Words words, boolean mirrored) {
    this.facts = facts;
    this.front = words.finder("side.front");
    this.behind = words.finder("side.behind");
    this.mirrored = mirrored;
  }

  /** What the figure shows instead, where a sentence names the wrong side; nothing if it agrees. */
  Optional<String> contradiction(String sentence, SideFinder.Found named) {
    Side said = (named.left() != mirrored) ? Side.LEFT : Side.RIGHT;
    Optional<Side> shown =
        switch (named.part()) {
          case "leg" -> leg(sentence);
          case "arm" -> alone(ARM).or(this::holding);
          default -> Optional.empty();
        };
    return shown
        .filter(side -> side != said)
        .map(side -> "it is the " + word(mirrored ? side.other() : side) + " one");
  }

  private Optional<Side> leg(String sentence) {
    if (!front.find(sentence).isEmpty()) {
      return inFront();
    }
    return behind.find(sentence).isEmpty() ? alone(LEG) : inFront().map(Side::other);
  }

  /** The leg that stands in front of the other at the start. */
  private Optional<Side> inFront() {
    MomentFacts start = facts.keys().get(0);
    double left = start.angles().get(Freedom.of(Joint.HIP, Side.LEFT, Movement.FLEXION));
    double right = start.angles().get(Freedom.of(Joint.HIP, Side.RIGHT, Movement.FLEXION));
    return Math.abs(left - right) < SEEN
        ? Optional.empty()
        : Optional.of(left > right ? Side.LEFT : Side.RIGHT);
  }

  /** The side whose joints alone move. */
  private Optional<Side> alone(Set<Joint> joints) {
    boolean left = moves(joints, Side.LEFT);
    boolean right = moves(joints, Side.RIGHT);
    return left == right ? Optional.empty() : Optional.of(left ? Side.LEFT : Side.RIGHT);
  }

  private boolean moves(Set<Joint> joints, Side side) {
    return facts.extremes().entrySet().stream()
        .filter(one -> joints.contains(one.getKey().joint()))
        .filter(one -> one.getKey().side().equals(Optional.of(side)))
        .map(Map.Entry::getValue)
        .anyMatch(ShownSides::seen);
  }

  private static boolean seen(Extreme extreme) {
    return extreme.high() - extreme.low() > SEEN;
  }

  /** The side whose hand alone touches something. */
  private Optional<Side> holding() {
    boolean left = holds(Side.LEFT);
    boolean right = holds(Side.RIGHT);
    return left == right ? Optional.empty() : Optional.of(left ? Side.LEFT : Side.RIGHT);
  }

  private boolean holds(Side side) {
    return facts.keys().stream()
        .flatMap(key -> key.misses().stream())
        .map(miss -> miss.contact())
        .anyMatch(contact -> hand(contact) && contact.side().equals(Optional.of(side)));
  }

  private static boolean hand(Contact contact) {
    return contact.part() == Part.HAND || contact.part() == Part.FINGERTIPS;
  }

  private static String word(Side side) {
    return side == Side.LEFT ? "left" : "right";
  }
}
