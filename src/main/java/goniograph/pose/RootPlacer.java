package goniograph.pose;

import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;

/**
 * Places the whole body by the first contact that can carry it: its height so that the part touches
 * what is below, its place on the ground so that the part is where it was before. Where other
 * contacts want the body elsewhere, {@link RootFit} decides between them.
 */
final class RootPlacer {
  private static final Vec DOWN = new Vec(0, -1, 0);

  private final PoseFile pose;
  private final Pins pins;

  RootPlacer(PoseFile pose, Pins pins) {
    this.pose = pose;
    this.pins = pins;
  }

  /** The contact that carries the body, where there is one. */
  static Optional<Contact> carrier(List<Contact> contacts, Touch touch) {
    return contacts.stream()
        .filter(contact -> contact.part().root() && !touch.upright(contact))
        .filter(contact -> touch.face(contact).isPresent())
        .findFirst();
  }

  /**
   * The body where its contacts put it; without a carrier, its soles on the floor.
   *
   * @param first true in the first key frame, before the supports have their final places
   */
  Skeleton place(Skeleton s, List<Contact> contacts, Touch touch, boolean first) {
    Optional<Contact> carrier = carrier(contacts, touch);
    if (carrier.isEmpty()) {
      double lowest = -Outline.trunkAndLegs(s, DOWN);
      return s.moved(Vec.UP.times(-lowest));
    }
    List<Contact> carrying = carrying(carrier.get(), contacts, touch);
    Vec back = back(s, carrying, pins);
    Skeleton anchored = s.moved(new Vec(back.x(), 0, back.z()));
    Skeleton settled = settled(anchored, carrying, pins, touch);
    Skeleton fitted = new RootFit(pose.base(), pins, touch, first).fit(settled, contacts, carrying);
    carrying.forEach(c -> pins.keep(c, Touch.anchor(fitted, c), Touch.heading(fitted, c)));
    return fitted;
  }

  private static List<Contact> carrying(Contact carrier, List<Contact> contacts, Touch touch) {
    return contacts.stream()
        .filter(c -> c.part() == carrier.part() && !touch.upright(c))
        .filter(c -> touch.face(c).isPresent())
        .toList();
  }

  /**
   * The body at the height at which the highest carrier touches; on trunk or knees also where they
   * were before, while feet stay by bending their legs.
   */
  static Skeleton settled(Skeleton s, List<Contact> carrying, Pins pins, Touch touch) {
    double up = carrying.stream().mapToDouble(c -> -touch.gap(s, c)).max().orElse(0);
    boolean stands = carrying.get(0).part() == Part.FOOT;
    Vec back = stands ? Vec.ZERO : back(s, carrying, pins);
    return s.moved(new Vec(back.x(), up, back.z()));
  }

  /** From where the carriers are to where they were before. */
  private static Vec back(Skeleton s, List<Contact> carrying, Pins pins) {
    Vec sum = Vec.ZERO;
    int pinned = 0;
    for (Contact c : carrying) {
      Optional<Pins.Pin> pin = pins.find(c);
      if (pin.isPresent()) {
        sum = sum.plus(pin.get().point().minus(Touch.anchor(s, c)));
        pinned++;
      }
    }
    return sum.times(1.0 / Math.max(1, pinned));
  }
}
