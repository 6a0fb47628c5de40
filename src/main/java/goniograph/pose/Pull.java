package goniograph.pose;

import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Vec;

/**
 * How a thing acts on the body in one place.
 *
 * @param limb the limb segment it acts on
 * @param at where, in body heights
 * @param share force for each newton of the band's tension or of the thing's weight
 */
public record Pull(Limb limb, Side side, Vec at, Vec share) {}
