package goniograph.figure;

import goniograph.body.Side;
import goniograph.pose.Contact;
import goniograph.pose.Moment;
import goniograph.pose.Part;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * By which of its parts a limb rests, the outermost first; what is held or slides rests nowhere.
 */
enum Resting {
  HAND(Part.HAND, Part.FINGERTIPS),
  FOREARM(Part.FOREARM),
  ELBOW(Part.ELBOW),
  FOOT(Part.FOOT),
  TOES(Part.TOES),
  KNEE(Part.KNEE),
  NOTHING;

  private final List<Part> parts;

  Resting(Part... parts) {
    this.parts = List.of(parts);
  }

  static Resting arm(Moment moment, Side side) {
    return of(moment, side, HAND, FOREARM, ELBOW);
  }

  static Resting leg(Moment moment, Side side) {
    return of(moment, side, FOOT, TOES, KNEE);
  }

  static boolean head(Moment moment) {
    return moment.contacts().stream().anyMatch(contact -> contact.part() == Part.HEAD);
  }

  private static Resting of(Moment moment, Side side, Resting... among) {
    return Arrays.stream(among)
        .filter(one -> moment.contacts().stream().anyMatch(c -> one.rests(c, side)))
        .findFirst()
        .orElse(NOTHING);
  }

  private boolean rests(Contact contact, Side side) {
    return parts.contains(contact.part())
        && contact.side().equals(Optional.of(side))
        && (contact.manner() == Contact.Manner.ON || contact.manner() == Contact.Manner.STAYS_ON);
  }

  /** What rests in both of two moments: of two parts the one nearer to the trunk. */
  Resting least(Resting other) {
    return compareTo(other) > 0 ? this : other;
  }

  /** True where the leg carries or steadies the body. */
  boolean planted() {
    return this != NOTHING;
  }
}
