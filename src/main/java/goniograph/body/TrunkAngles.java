package goniograph.body;

/**
 * Angles of one part of the trunk against the part below it, in degrees.
 *
 * @param flexion forward positive
 * @param bend to the right positive
 * @param turn to the right positive
 */
record TrunkAngles(double flexion, double bend, double turn) {
  TrunkAngles plus(TrunkAngles o) {
    return new TrunkAngles(flexion + o.flexion, bend + o.bend, turn + o.turn);
  }
}
