package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;

/**
 * A support where it stands.
 *
 * @param kind what it is
 * @param boxes what it is made of
 * @param level its upper face
 * @param upright its upright face towards the person: a wall, a chair's back
 * @param near the middle of the edge or face next to the person
 */
record Placed(
    SupportKind kind,
    List<Box> boxes,
    Optional<Surface> level,
    Optional<Surface> upright,
    Vec near) {}
