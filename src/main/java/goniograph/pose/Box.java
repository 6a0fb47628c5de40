package goniograph.pose;

import goniograph.body.Turn;
import goniograph.body.Vec;

/**
 * A box of a support: a seat, a leg of a chair, a worktop, a wall.
 *
 * @param centre its middle, in body heights
 * @param axes its own axes
 * @param half half its size along its own axes
 */
public record Box(Vec centre, Turn axes, Vec half) {}
