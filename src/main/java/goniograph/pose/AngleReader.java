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
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads maps of angles: {@code hip left: "flexion 60, abduction 5"}. A joint that stands on both
 * sides takes left, right or both.
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
  private final List<TypedAngle> angles = new ArrayList<>();

  private AngleReader(Complaint complaint) {
    this.complaint = complaint;
  }

  /** The angles of a map; what cannot be understood is left out after its finding. */
  static List<TypedAngle> read(Value value, Complaint complaint) {
    AngleReader reader = new AngleReader(complaint);
    value.form("the angles").ifPresent(form -> form.entries().forEach(reader::joint));
    return List.copyOf(reader.angles);
  }

  private void joint(Form.Entry entry) {
    Phrase key = new Phrase(entry.key().value(), entry.key().at());
    int blank = key.text().indexOf(' ');
    Phrase name = blank < 0 ? key : key.part(0, blank);
    Optional<Joint> joint = Joint.of(name.text());
    if (joint.isEmpty()) {
      complaint.unknown("pose-joint-unknown", name, "a joint", jointWords());
      return;
    }
    Optional<Phrase> side =
        blank < 0 ? Optional.empty() : Optional.of(key.part(blank, key.text().length()));
    sides(joint.get(), key, side).ifPresent(sides -> movements(joint.get(), sides, entry.value()));
  }

  /** The sides a key names; for joints of the trunk one empty side. */
  private Optional<List<Optional<Side>>> sides(Joint joint, Phrase key, Optional<Phrase> side) {
    if (!joint.paired()) {
      side.ifPresent(
          word ->
              complaint.say(
                  "pose-joint-side",
                  word,
                  "The " + joint.word() + " has no side; `" + word.text() + "` says one.",
                  "Write `" + joint.word() + ": …`."));
      return side.isPresent() ? Optional.empty() : Optional.of(List.of(Optional.empty()));
    }
    if (side.isEmpty()) {
      complaint.say(
          "pose-joint-side",
          key,
          "`" + joint.word() + "` does not say which side.",
          "Write `"
              + joint.word()
              + " left`, `"
              + joint.word()
              + " right` or `"
              + joint.word()
              + " both`.");
      return Optional.empty();
    }
    List<Side> named = SIDES.get(side.get().text());
    if (named == null) {
      complaint.unknown("pose-joint-side", side.get(), "a side", SIDE_WORDS);
      return Optional.empty();
    }
    return Optional.of(named.stream().map(Optional::of).toList());
  }

  private void movements(Joint joint, List<Optional<Side>> sides, Value value) {
    value
        .scalar()
        .ifPresent(
            scalar ->
                Phrase.of(scalar)
                    .clauses()
                    .forEach(
                        clause -> {
                          if (joint != Joint.HAND || !hand(sides, clause)) {
                            clause(joint, sides, clause);
                          }
                        }));
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
          "`" + clause.text() + "` is not a movement with a number behind it.",
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

  private static List<String> jointWords() {
    return Arrays.stream(Joint.values()).map(j -> j.name().toLowerCase(Locale.ROOT)).toList();
  }
}
