package goniograph.pose;

import goniograph.body.JointAngles;
import java.util.List;

/**
 * One pose of a movement, as typed.
 *
 * @param name {@code start}, {@code via-1}, {@code end}; {@code pose} where nothing moves
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
