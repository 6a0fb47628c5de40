package goniograph.pose;

import goniograph.body.Fingers;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.matter.Form;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads maps of angles: {@code hip left: "flexion 60, abduction 5"}, and how segments lie in the
 * world: {@code thigh left: level}. What stands on both sides takes left, right or both.
 */
final class AngleReader {
  private static final Pattern CLAUSE = Pattern.compile("(.*?)\\s*(-?\\d{1,3}(?:\\.\\d{1,2})?)");
  private static final Map<String, List<Side>> SIDES =
      Map.of(
          "left", List.of(Side.LEFT),
          "right", List.of(Side.RIGHT),
          "both", List.of(Side.LEFT, Side.RIGHT));
  private static final List<String> SIDE_WORDS = List.of("left", "right", "both");

  private final Complaint complaint;
  private final AimReader aims;
  private final List<TypedAngle> angles = new ArrayList<>();
  private final List<SegmentWish> wishes = new ArrayList<>();

  private AngleReader(List<String> things, Complaint complaint) {
    this.complaint = complaint;
    this.aims = new AimReader(things, complaint);
  }

  /**
   * The angles of a map; what cannot be understood is left out after its finding.
   *
   * @param things the words of what can be pointed at
   */
  static TypedAngles read(Value value, List<String> things, Complaint complaint) {
    AngleReader reader = new AngleReader(things, complaint);
    value.form("the angles").ifPresent(form -> form.entries().forEach(reader::entry));
    reader.aims.conflicts(reader.angles, reader.wishes);
    return new TypedAngles(reader.angles, reader.wishes);
  }

  private void entry(Form.Entry entry) {
    Phrase key = new Phrase(entry.key().value(), entry.key().at());
    int end = nameEnd(key.text());
    Phrase name = key.part(0, end);
    Optional<Joint> joint = Joint.of(name.text());
    Optional<Segment> segment = Segment.of(name.text());
    if (joint.isEmpty() && segment.isEmpty()) {
      complaint.unknown("pose-joint-unknown", name, "a joint or a segment", names());
      return;
    }
    Optional<Phrase> side =
        end == key.text().length()
            ? Optional.empty()
            : Optional.of(key.part(end, key.text().length()));
    boolean paired = joint.map(Joint::paired).orElseGet(() -> segment.orElseThrow().paired());
    sides(name.text(), paired, key, side)
        .ifPresent(sides -> clauses(new Named(name.text(), joint, segment, sides), entry.value()));
  }

  /** What a key names. */
  record Named(
      String word, Optional<Joint> joint, Optional<Segment> segment, List<Optional<Side>> sides) {}

  /** Where the name of a joint or segment ends and its side begins. */
  private static int nameEnd(String key) {
    for (String segment : Segment.words()) {
      if (key.equals(segment) || key.startsWith(segment + " ")) {
        return segment.length();
      }
    }
    int blank = key.indexOf(' ');
    return blank < 0 ? key.length() : blank;
  }

  /** The sides a key names; for what stands in the middle one empty side. */
  private Optional<List<Optional<Side>>> sides(
      String name, boolean paired, Phrase key, Optional<Phrase> side) {
    if (!paired) {
      side.ifPresent(
          word ->
              complaint.say(
                  "pose-joint-side",
                  word,
                  "The " + name + " has no side; `" + word.text() + "` says one.",
                  "Write `" + name + ": …`."));
      return side.isPresent() ? Optional.empty() : Optional.of(List.of(Optional.empty()));
    }
    if (side.isEmpty()) {
      complaint.say(
          "pose-joint-side",
          key,
          "`" + name + "` does not say which side.",
          "Write `" + name + " left`, `" + name + " right` or `" + name + " both`.");
      return Optional.empty();
    }
    List<Side> named = SIDES.get(side.get().text());
    if (named == null) {
      complaint.unknown("pose-joint-side", side.get(), "a side", SIDE_WORDS);
      return Optional.empty();
    }
    return Optional.of(named.stream().map(Optional::of).toList());
  }

  private void clauses(Named named, Value value) {
    value
        .scalar()
        .ifPresent(scalar -> Phrase.of(scalar).clauses().forEach(clause -> clause(named, clause)));
  }

  private void clause(Named named, Phrase clause) {
    if (aims.isAim(clause)) {
      aims.read(named, clause).ifPresent(wishes::addAll);
    } else if (named.joint.isPresent()) {
      angle(named.joint.get(), named.sides, clause);
    } else {
      aims.unknown(named, clause);
    }
  }

  private void angle(Joint joint, List<Optional<Side>> sides, Phrase clause) {
    if (joint != Joint.HAND || !hand(sides, clause)) {
      clause(joint, sides, clause);
    }
  }

  /** True where the clause is one of a hand's short words, understood or not. */
  private boolean hand(List<Optional<Side>> sides, Phrase clause) {
    Optional<Fingers> fingers =
        HandWords.isShape(clause) ? HandWords.shape(clause, complaint) : HandWords.curl(clause);
    fingers.ifPresent(
        bent -> sides.forEach(side -> angles.addAll(HandWords.angles(bent, side, clause))));
    return fingers.isPresent() || HandWords.isShape(clause);
  }

  private void clause(Joint joint, List<Optional<Side>> sides, Phrase clause) {
    Matcher parts = CLAUSE.matcher(clause.text());
    if (!parts.matches()) {
      complaint.say(
          "pose-angle-number",
          clause,
          "`"
              + clause.text()
              + "` is not a movement of the "
              + joint.word()
              + " with a number behind it.",
          "Write, for instance, `" + words(joint).get(0) + " 10`.");
      return;
    }
    Phrase word = clause.part(0, parts.end(1));
    Optional<Movement.Word> movement =
        Movement.of(word.text()).filter(m -> joint.movements().contains(m.movement()));
    if (movement.isEmpty()) {
      complaint.unknown(
          "pose-movement-unknown", word, "a movement of the " + joint.word(), words(joint));
      return;
    }
    double value = movement.get().sign() * Double.parseDouble(parts.group(2));
    sides.forEach(
        side ->
            angles.add(
                new TypedAngle(
                    new Freedom(joint, side, movement.get().movement()), value, clause.at())));
  }

  private static List<String> words(Joint joint) {
    Stream<String> own =
        joint.movements().stream()
            .flatMap(m -> Stream.of(m.positive(), m.negative()))
            .filter(word -> !word.isEmpty());
    return Stream.concat(joint == Joint.HAND ? HandWords.ALL.stream() : Stream.empty(), own)
        .toList();
  }

  private static List<String> names() {
    return Stream.concat(Arrays.stream(Joint.values()).map(Joint::word), Segment.words().stream())
        .distinct()
        .toList();
  }
}
