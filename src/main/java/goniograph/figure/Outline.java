package goniograph.figure;

import org.locationtech.jts.geom.Geometry;

/**
 * How a part is bounded.
 *
 * @param edge the lines of its outline, welds left out
 * @param halo the lines along which white is left free round it
 */
record Outline(Geometry edge, Geometry halo) {}
