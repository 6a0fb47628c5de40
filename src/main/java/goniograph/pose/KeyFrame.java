package goniograph.pose;

import goniograph.body.JointAngles;
import java.util.ArrayList;
import java.util.List;

/**
 * One pose of a movement, as typed.
 *
 * @param name {@code start}, {@code via-1}, {@code end}; {@code pose} where nothing moves; {@code
 *     wrong} how it is not to be done
 * @param typed the angles that this frame adds to those of all frames
 * @param wishes how segments shall lie in this frame, beside those of all frames
 * @param contacts the contacts that this frame adds to those of all frames
 * @param aimed the angles that the wishes come to, once they are worked out
 */
public record KeyFrame(
    String name,
    List<TypedAngle> typed,
    List<SegmentWish> wishes,
    List<Contact> contacts,
    JointAngles aimed) {
  public KeyFrame {
    typed = List.copyOf(typed);
    wishes = List.copyOf(wishes);
    contacts = List.copyOf(contacts);
  }

  /** A frame as typed. */
  KeyFrame(String name, TypedAngles typed, List<Contact> contacts) {
    this(name, typed.angles(), typed.wishes(), contacts, JointAngles.NONE);
  }

  /** The same with its wishes worked out. */
  KeyFrame aimed(JointAngles angles) {
    return new KeyFrame(name, typed, wishes, contacts, angles);
  }

  /** What this frame says, and what another says where this one says nothing. */
  KeyFrame over(KeyFrame other) {
    List<TypedAngle> angles = new ArrayList<>(other.typed);
    angles.addAll(typed);
    List<SegmentWish> lying = new ArrayList<>(wishes);
    other.wishes.stream().filter(this::saysNothingOf).forEach(lying::add);
    List<Contact> touching = new ArrayList<>(contacts);
    touching.addAll(other.contacts);
    return new KeyFrame(name, angles, lying, touching, aimed);
  }

  /** True where neither an angle nor a wish of this frame says how the wish's segment lies. */
  boolean saysNothingOf(SegmentWish wish) {
    return wishes.stream().noneMatch(wish::sameSegment)
        && typed.stream().noneMatch(angle -> angle.freedom().equals(wish.own()));
  }

  /** Left and right swapped. */
  KeyFrame mirrored() {
    return new KeyFrame(
        name,
        typed.stream().map(TypedAngle::mirrored).toList(),
        wishes.stream().map(SegmentWish::mirrored).toList(),
        contacts.stream().map(Contact::mirrored).toList(),
        aimed.mirrored());
  }
}
