package goniograph.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads how a segment lies in the world: {@code level}, {@code upright}, {@code pointing at …}. */
final class AimReader {
  private static final List<String> WORDS = List.of("level", "upright", "pointing at");

  private final List<String> targets;
  private final Complaint complaint;

  /**
   * A reader for one pose.
   *
   * @param things the words of what stands in the pose
   */
  AimReader(List<String> things, Complaint complaint) {
    this.targets = new ArrayList<>(Aim.Direction.words());
    things.stream().filter(thing -> !targets.contains(thing)).forEach(targets::add);
    this.complaint = complaint;
  }

  /** True where a clause speaks of the world and not of a joint's angle. */
  boolean isAim(Phrase clause) {
    return clause.text().equals("level")
        || clause.text().equals("upright")
        || clause.text().startsWith("pointing");
  }

  /** The wishes of a clause that {@link #isAim}, one for each side. */
  Optional<List<SegmentWish>> read(AngleReader.Named named, Phrase clause) {
    if (named.segment().isEmpty()) {
      jointAimed(named, clause);
      return Optional.empty();
    }
    return aim(clause)
        .map(
            aim ->
                named.sides().stream()
                    .map(side -> new SegmentWish(named.segment().get(), side, aim, clause.at()))
                    .toList());
  }

  private void jointAimed(AngleReader.Named named, Phrase clause) {
    String segment = named.joint().flatMap(Segment::movedBy).map(Segment::word).orElse("forearm");
    complaint.say(
        "pose-aim-joint",
        clause,
        "The " + named.word() + " is a joint; `" + clause.text() + "` says how a segment lies.",
        "Write `" + segment + " …: " + clause.text() + "`, or the joint's angle.");
  }

  private Optional<Aim> aim(Phrase clause) {
    if (clause.text().equals("level")) {
      return Optional.of(new Aim.Level());
    }
    if (clause.text().equals("upright")) {
      return Optional.of(new Aim.Upright());
    }
    int end = Math.min(clause.text().length(), Aim.POINTING.length());
    Phrase target = clause.part(end, clause.text().length());
    if (!clause.text().startsWith(Aim.POINTING) || !targets.contains(target.text())) {
      complaint.unknown("pose-aim-target", target, "a direction or a thing in this pose", targets);
      return Optional.empty();
    }
    return Optional.of(
        Aim.Direction.of(target.text())
            .<Aim>map(Aim.Pointing::new)
            .orElseGet(() -> new Aim.PointingAt(target.text())));
  }

  /** A clause of a segment that is none of the words. */
  void unknown(AngleReader.Named named, Phrase clause) {
    complaint.unknown(
        "pose-aim-unknown",
        clause,
        "a way the " + named.word() + " can lie",
        WORDS,
        "Known here: `level`, `upright` and `pointing at` with a direction or a thing. An angle in"
            + " degrees is typed at its joint: hip, knee, ankle, shoulder, elbow, pelvis.");
  }

  /** A joint cannot have an angle and be worked out as well. */
  void conflicts(List<TypedAngle> angles, List<SegmentWish> wishes) {
    for (SegmentWish wish : wishes) {
      angles.stream()
          .filter(angle -> angle.freedom().equals(wish.own()))
          .findFirst()
          .ifPresent(angle -> conflict(angle, wish));
    }
  }

  private void conflict(TypedAngle angle, SegmentWish wish) {
    String typed =
        angle.freedom().jointWords() + ": " + angle.freedom().movement().word(angle.value());
    complaint.say(
        "pose-aim-conflict",
        new Phrase(wish.words(), wish.at()),
        "`"
            + wish.words()
            + "` works out the angle that `"
            + typed
            + "` types in line "
            + angle.at().line()
            + ".",
        "Of two numbers for one joint, the one that is drawn would be an accident.",
        "Keep one of the two.");
  }
}
