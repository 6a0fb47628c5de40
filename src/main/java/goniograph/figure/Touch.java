package goniograph.figure;

import goniograph.pose.Contact;
import goniograph.pose.Part;

/**
 * What touches or is held.
 *
 * @param part the part of the body
 * @param sides its side; both for both of a pair, midline for a part without a pair
 * @param held true where the hand holds it, false where the part rests on it
 * @param target the word of the support or thing
 */
public record Touch(Part part, PoseTelling.Sides sides, boolean held, String target) {

  static Touch of(Contact contact) {
    PoseTelling.Sides sides =
        contact
            .side()
            .map(PoseTelling.Sides::of)
            .orElse(contact.part().paired() ? PoseTelling.Sides.BOTH : PoseTelling.Sides.MIDLINE);
    boolean held = contact.manner() == Contact.Manner.HOLDING;
    return new Touch(contact.part(), sides, held, contact.target());
  }

  /** True where both say the same of the two sides. */
  boolean twin(Touch other) {
    return part == other.part
        && held == other.held
        && target.equals(other.target)
        && sides != other.sides
        && part.paired();
  }

  Touch on(PoseTelling.Sides others) {
    return new Touch(part, others, held, target);
  }
}
