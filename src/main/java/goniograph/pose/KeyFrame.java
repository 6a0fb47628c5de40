package goniograph.pose;

import java.util.List;

/**
 * One pose of a movement, as typed.
 *
 * @param name {@code start}, {@code via-1}, {@code end}; {@code pose} where nothing moves
 * @param typed the angles that this frame adds to those of all frames
 * @param contacts the contacts that this frame adds to those of all frames
 */
public record KeyFrame(String name, List<TypedAngle> typed, List<Contact> contacts) {
  public KeyFrame {
    typed = List.copyOf(typed);
    contacts = List.copyOf(contacts);
  }

  /** Left and right swapped. */
  KeyFrame mirrored() {
    return new KeyFrame(
        name,
        typed.stream().map(TypedAngle::mirrored).toList(),
        contacts.stream().map(Contact::mirrored).toList());
  }
}
