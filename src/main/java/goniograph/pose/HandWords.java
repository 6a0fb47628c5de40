package goniograph.pose;

import goniograph.body.FingerShape;
import goniograph.body.Fingers;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two short ways to bend all fingers of a hand: {@code curl 70} and {@code shape fist}. */
final class HandWords {
  private static final Pattern CURL = Pattern.compile("curl\\s+(-?\\d{1,3}(?:\\.\\d{1,2})?)");
  private static final Pattern SHAPE = Pattern.compile("shape(?:\\s.*)?");

  /** The words, beside those of the single joints. */
  static final List<String> ALL = List.of("curl", "shape");

  private HandWords() {}

  /** True where a clause names a shape, known or not. */
  static boolean isShape(Phrase clause) {
    return SHAPE.matcher(clause.text()).matches();
  }

  /** The shape a clause names; a finding where there is none of that name. */
  static Optional<Fingers> shape(Phrase clause, Complaint complaint) {
    Phrase word = clause.part("shape".length(), clause.text().length());
    Optional<FingerShape> shape = FingerShape.of(word.text());
    if (shape.isEmpty()) {
      complaint.unknown("pose-movement-unknown", word, "a shape of the hand", FingerShape.words());
    }
    return shape.map(FingerShape::fingers);
  }

  /** The fingers that {@code curl} with a number gives. */
  static Optional<Fingers> curl(Phrase clause) {
    Matcher curl = CURL.matcher(clause.text());
    return curl.matches()
        ? Optional.of(Fingers.curl(Double.parseDouble(curl.group(1))))
        : Optional.empty();
  }

  /** The angles of a hand's joints, all at the clause's place. */
  static List<TypedAngle> angles(Fingers fingers, Optional<Side> side, Phrase clause) {
    return List.of(
        angle(side, Movement.KNUCKLES, fingers.knuckles(), clause),
        angle(side, Movement.MIDDLE, fingers.middle(), clause),
        angle(side, Movement.ENDS, fingers.ends(), clause),
        angle(side, Movement.THUMB, fingers.thumb(), clause));
  }

  private static TypedAngle angle(
      Optional<Side> side, Movement joint, double degrees, Phrase clause) {
    return new TypedAngle(new Freedom(Joint.HAND, side, joint), degrees, clause.at());
  }
}
