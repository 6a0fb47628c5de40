package goniograph.check.rules;

import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.language.Amounts;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds angles of joints in everyday words: "bend your knee to 90 degrees". */
final class SaidAngles {
  private static final double RIGHT_ANGLE = 90;

  /** A joint as people speak of it: a leg lifted is a hip bent, an arm lifted a shoulder. */
  enum SaidJoint {
    KNEE(Joint.KNEE, Movement.FLEXION),
    HIP(Joint.HIP, Movement.FLEXION),
    ELBOW(Joint.ELBOW, Movement.FLEXION),
    SHOULDER(Joint.SHOULDER, Movement.FLEXION, Movement.ABDUCTION),
    ANKLE(Joint.ANKLE, Movement.DORSIFLEXION),
    WRIST(Joint.WRIST, Movement.FLEXION),
    LEAN(null);

    private final Optional<Joint> joint;
    private final Set<Movement> movements;

    SaidJoint(@Nullable Joint joint, Movement... movements) {
      this.joint = Optional.ofNullable(joint);
      this.movements = Set.of(movements);
    }

    /** The joint; none for the lean of the trunk. */
    Optional<Joint> joint() {
      return joint;
    }

    /** The movements that are meant. */
    Set<Movement> movements(boolean sideways) {
      boolean hasAbduction = this == HIP || this == SHOULDER;
      return sideways && hasAbduction ? Set.of(Movement.ABDUCTION) : movements;
    }

    /** Whether the height of a seat decides its angle. */
    boolean setBySeat() {
      return this == KNEE || this == HIP;
    }

    /** Its word. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Whether the angle is where it goes, or how far at most or least. */
  enum Bound {
    EXACT,
    MOST,
    LEAST
  }

  /**
   * An angle that is said.
   *
   * @param from its first character in the sentence
   * @param to behind its last character
   * @param inDegrees whether it is a number; otherwise a right angle
   */
  record Angle(
      int from,
      int to,
      SaidJoint joint,
      double degrees,
      boolean sideways,
      Bound bound,
      boolean inDegrees) {}

  private record Named(int from, int to, SaidJoint joint) {}

  private final Words words;
  private final Amounts amounts;

  SaidAngles(Words words) {
    this.words = words;
    this.amounts = Amounts.of(words);
  }

  /** The angles of a sentence; each belongs to the joint named last before it, else to the next. */
  List<Angle> find(String sentence) {
    List<Named> joints = joints(sentence);
    if (joints.isEmpty()) {
      return List.of();
    }
    List<Angle> angles = new ArrayList<>();
    for (Amounts.Amount amount : amounts.find(sentence)) {
      if (amount.unit().equals("deg")) {
        double degrees = amount.value().doubleValue();
        angles.add(angle(sentence, amount.from(), amount.to(), degrees, true, joints));
      }
    }
    finder("angle.right")
        .find(sentence)
        .forEach(
            one -> angles.add(angle(sentence, one.from(), one.to(), RIGHT_ANGLE, false, joints)));
    return angles;
  }

  private Angle angle(
      String sentence, int from, int to, double degrees, boolean number, List<Named> joints) {
    Named joint =
        joints.stream()
            .filter(one -> one.to() <= from)
            .reduce((one, later) -> later)
            .orElse(joints.get(0));
    return new Angle(
        from,
        to,
        joint.joint(),
        degrees,
        !finder("angle.sideways").find(sentence).isEmpty(),
        bound(sentence, from),
        number);
  }

  private Bound bound(String sentence, int from) {
    String before = sentence.substring(0, from).stripTrailing();
    if (ends(before, "angle.most")) {
      return Bound.MOST;
    }
    return ends(before, "angle.least") ? Bound.LEAST : Bound.EXACT;
  }

  private boolean ends(String before, String list) {
    return finder(list).find(before).stream().anyMatch(one -> one.to() == before.length());
  }

  private List<Named> joints(String sentence) {
    return Stream.of(SaidJoint.values())
        .flatMap(
            joint ->
                finder("joint." + joint.word()).find(sentence).stream()
                    .map(found -> new Named(found.from(), found.to(), joint)))
        .sorted(Comparator.comparingInt(Named::from))
        .toList();
  }

  private WordFinder finder(String list) {
    return words.finder(list);
  }
}
