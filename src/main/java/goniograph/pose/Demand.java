package goniograph.pose;

import goniograph.body.Vec;
import java.util.Optional;

/**
 * What one joint is asked to hold: linear in the load. All in Nm.
 *
 * @param own the moment of the body's own weight
 * @param perKg the moment for each kg that is held
 * @param perNewton the moment for each N of the band's tension
 * @param flexing the axis about which the moment is told with its sign; empty where its size is
 *     told
 */
record Demand(Vec own, Vec perKg, Vec perNewton, Optional<Vec> flexing) {
  double nm(Load load) {
    Vec all = own.plus(perKg.times(load.kg())).plus(perNewton.times(load.bandN()));
    return flexing.map(all::dot).orElseGet(all::length);
  }
}
