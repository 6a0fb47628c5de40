package goniograph.figure;

import goniograph.body.Side;
import java.util.Optional;

/**
 * An angle that was asked for and not drawn, because the view shows it too nearly edge on.
 *
 * @param joint the pose file's joint word
 * @param side its side where it has one
 * @param moment the key frame
 * @param seen how squarely the angle's plane is seen, 0 to 1; drawn from .35
 * @param better the word of the view that shows it most squarely
 */
public record Refusal(
    String joint, Optional<Side> side, String moment, double seen, String better) {}
