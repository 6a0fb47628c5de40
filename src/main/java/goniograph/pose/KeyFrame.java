package goniograph.pose;

import java.util.ArrayList;
import java.util.List;

/**
 * One pose of a movement, as typed.
 *
 * @param name {@code start}, {@code via-1}, {@code end}; {@code pose} where nothing moves; {@code
 *     wrong} how it is not to be done
 * @param typed the angles that this frame adds to those of all frames
 * @param contacts the contacts that this frame adds to those of all frames
 */
public record KeyFrame(String name, List<TypedAngle> typed, List<Contact> contacts) {
  public KeyFrame {
    typed = List.copyOf(typed);
    contacts = List.copyOf(contacts);
  }

  /** This frame's angles and contacts, and those of another where this one says nothing. */
  KeyFrame over(KeyFrame other) {
    List<TypedAngle> angles = new ArrayList<>(other.typed);
    angles.addAll(typed);
    List<Contact> touching = new ArrayList<>(contacts);
    touching.addAll(other.contacts);
    return new KeyFrame(name, angles, touching);
  }

  /** Left and right swapped. */
  KeyFrame mirrored() {
    return new KeyFrame(
        name,
        typed.stream().map(TypedAngle::mirrored).toList(),
        contacts.stream().map(Contact::mirrored).toList());
  }
}
