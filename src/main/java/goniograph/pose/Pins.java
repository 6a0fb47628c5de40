package goniograph.pose;

import goniograph.body.Side;
import goniograph.body.Vec;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where parts touch, from the first key frame that has them there: later frames keep to these
 * places. Filled while the key frames are solved in order, read while the moments between are.
 */
final class Pins {
  private final Map<Key, Pin> pins = new HashMap<>();

  private record Key(Part part, Optional<Side> side, String target) {
    static Key of(Contact contact) {
      return new Key(contact.part(), contact.side(), contact.target());
    }
  }

  /**
   * A place.
   *
   * @param point where the part's own point is
   * @param heading where toes or fingers point
   */
  record Pin(Vec point, Vec heading) {}

  /** The place of a contact, if it has been in a frame before. */
  Optional<Pin> find(Contact contact) {
    return Optional.ofNullable(pins.get(Key.of(contact)));
  }

  /** Keeps a place, unless the contact has one or slides. */
  void keep(Contact contact, Vec point, Vec heading) {
    if (contact.manner() != Contact.Manner.SLIDES_ON) {
      pins.putIfAbsent(Key.of(contact), new Pin(point, heading));
    }
  }
}
