package goniograph.pose;

import goniograph.body.Joint;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.matter.Node;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads marks ({@code ghost}, {@code arrow right hand}) and what moves ({@code left arm}). */
final class Marks {
  private static final List<String> LIMBS = List.of("arm", "forearm", "thigh", "leg");
  private static final List<String> PAIRED_POINTS =
      List.of(
          "hand",
          "forearm",
          "arm",
          "thigh",
          "leg",
          "foot",
          "knee",
          "heel",
          "wrist",
          "calf",
          "shoulder",
          "elbow",
          "ankle",
          "toes",
          "ear");
  private static final List<String> SINGLE_POINTS = List.of("hips", "nose", "top", "chest");
  private static final SortedMap<String, Optional<Side>> SIDES =
      new TreeMap<>(Map.of("left ", Optional.of(Side.LEFT), "right ", Optional.of(Side.RIGHT)));
  private static final SortedMap<String, Point> POINTS = points(SINGLE_POINTS, PAIRED_POINTS);
  private static final SortedMap<String, Point> TARGETS =
      points(List.of("neck", "low back", "upper back"), List.of("shin", "buttock"));
  private static final Map<String, Moving> MOVING = moving();
  private static final Map<String, Mark> MARKS = marks();

  /** How a kind of word is named in findings. */
  private record Forms(String rule, String what, String sentence) {}

  private static final Forms MARK_FORMS =
      new Forms(
          "pose-mark-unknown",
          "a mark",
          "Known are `ghost`, `balance`, `plumb`; `arrow` and `target` with `"
              + String.join("`, `", SINGLE_POINTS)
              + "`, or `left` or `right` and `"
              + String.join("`, `", PAIRED_POINTS)
              + "` (`arrow right heel`, `arrow right hand both ways`, `arrow right knee down`,"
              + " `target right thigh back`); `landmark` with two points (`landmark right hand"
              + " nose`); and `angle` with a joint (`angle left knee`, `angle cva`).");
  private static final Forms MOVING_FORMS =
      new Forms(
          "pose-moving-unknown",
          "a part that moves",
          "Known are `left` or `right` with `hand`, `forearm`, `arm`, `thigh`, `leg` or `foot`,"
              + " and `arms`, `legs`, `body`, `head`.");

  private Marks() {}

  /** The marks of a list. */
  static List<Mark> marks(Value list, Complaint complaint) {
    return list.list(item -> item.scalar().flatMap(s -> one(s, MARKS, MARK_FORMS, complaint)));
  }

  /** What moves: one word or a list of words. */
  static Moving moving(Value value, Complaint complaint) {
    boolean alone = value.node().filter(Node.Scalar.class::isInstance).isPresent();
    List<Moving> parts =
        alone
            ? value.scalar().flatMap(s -> part(s, complaint)).stream().toList()
            : value.list(item -> item.scalar().flatMap(s -> part(s, complaint)));
    twice(value, complaint);
    return parts.stream().reduce(Moving.NOTHING, Moving::and);
  }

  /** A part that is named twice: most often the other side was meant. */
  private static void twice(Value list, Complaint complaint) {
    Set<String> named = new HashSet<>();
    list.node()
        .filter(Node.Items.class::isInstance)
        .map(Node.Items.class::cast)
        .ifPresent(
            items ->
                items.items().stream()
                    .filter(Node.Scalar.class::isInstance)
                    .map(item -> Phrase.of((Node.Scalar) item))
                    .filter(word -> MOVING.containsKey(word.text()) && !named.add(word.text()))
                    .forEach(word -> twice(word, complaint)));
  }

  private static void twice(Phrase word, Complaint complaint) {
    complaint.say(
        "pose-moving-twice",
        word,
        "`" + word.text() + "` is named twice as moving.",
        "Write the part that was meant, perhaps of the other side, or name it once.");
  }

  private static Optional<Moving> part(Node.Scalar scalar, Complaint complaint) {
    return one(scalar, MOVING, MOVING_FORMS, complaint);
  }

  private static <T> Optional<T> one(
      Node.Scalar scalar, Map<String, T> known, Forms forms, Complaint complaint) {
    Phrase phrase = Phrase.of(scalar);
    Optional<T> found = Optional.ofNullable(known.get(phrase.text()));
    if (found.isEmpty()) {
      complaint.unknown(forms.rule, phrase, forms.what, known.keySet(), forms.sentence);
    }
    return found;
  }

  private static Map<String, Mark> marks() {
    Map<String, Mark> all = new LinkedHashMap<>();
    all.put("ghost", new Mark.Ghost());
    all.put("balance", new Mark.Balance());
    all.put("plumb", new Mark.Plumb());
    POINTS.forEach((word, point) -> pointMarks(word, point, all));
    TARGETS.forEach((word, point) -> all.put("target " + word, target(point, Optional.empty())));
    for (String joint : angleWords(false)) {
      all.put("angle " + joint, new Mark.Angle(joint, Optional.empty()));
    }
    for (String joint : angleWords(true)) {
      SIDES.forEach((word, side) -> all.put("angle " + word + joint, new Mark.Angle(joint, side)));
    }
    return all;
  }

  private static void pointMarks(String word, Point point, Map<String, Mark> all) {
    for (Mark.Way way : Mark.Way.values()) {
      all.put("arrow " + word + way.word(), new Mark.Arrow(point.word, point.side, way));
    }
    all.put("target " + word, target(point, Optional.empty()));
    if (LIMBS.contains(point.word)) {
      for (Mark.Face face : Mark.Face.values()) {
        all.put("target " + word + " " + face.word(), target(point, Optional.of(face)));
      }
    }
    POINTS.forEach(
        (other, to) ->
            all.put(
                "landmark " + word + " " + other,
                new Mark.Landmark(point.word, point.side, to.word, to.side)));
  }

  private static Mark target(Point point, Optional<Mark.Face> face) {
    return new Mark.Target(point.word, point.side, face);
  }

  /** A point of the body, as words tell it. */
  private record Point(String word, Optional<Side> side) {}

  private static SortedMap<String, Point> points(List<String> single, List<String> paired) {
    SortedMap<String, Point> points = new TreeMap<>();
    single.forEach(word -> points.put(word, new Point(word, Optional.empty())));
    for (String word : paired) {
      SIDES.forEach((side, of) -> points.put(side + word, new Point(word, of)));
    }
    return points;
  }

  private static List<String> angleWords(boolean paired) {
    List<String> words =
        new ArrayList<>(
            Arrays.stream(Joint.values())
                .filter(joint -> joint.paired() == paired && joint != Joint.HAND)
                .map(Joint::word)
                .toList());
    words.add(paired ? "rotation" : "cva");
    return words;
  }

  private static Map<String, Moving> moving() {
    Set<Limb> arm = EnumSet.of(Limb.UPPER_ARM, Limb.FOREARM, Limb.HAND);
    Set<Limb> leg = EnumSet.of(Limb.THIGH, Limb.SHANK, Limb.FOOT);
    Map<String, Set<Limb>> limbs = new LinkedHashMap<>();
    limbs.put("hand", EnumSet.of(Limb.HAND));
    limbs.put("forearm", EnumSet.of(Limb.FOREARM, Limb.HAND));
    limbs.put("arm", arm);
    limbs.put("thigh", EnumSet.of(Limb.THIGH));
    limbs.put("leg", leg);
    limbs.put("foot", EnumSet.of(Limb.FOOT));
    Map<String, Moving> all = new LinkedHashMap<>();
    limbs.forEach(
        (word, segments) -> {
          all.put("left " + word, Moving.of(Side.LEFT, segments));
          all.put("right " + word, Moving.of(Side.RIGHT, segments));
        });
    all.put("arms", Moving.both(arm, false));
    all.put("legs", Moving.both(leg, false));
    all.put("body", Moving.both(EnumSet.allOf(Limb.class), true));
    all.put("head", Moving.both(Set.of(), true));
    return all;
  }
}
