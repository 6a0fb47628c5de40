package goniograph.figure;

import goniograph.body.Side;
import java.util.Optional;

/**
 * A mark that was asked for and not drawn: an angle that the view shows too nearly edge on, a
 * target that faces away.
 *
 * @param mark the pose file's word for the joint or the part
 * @param side its side where it has one
 * @param moment the key frame
 * @param seen how squarely it is seen, 0 to 1; angles are drawn from .35
 * @param better the word of the view that shows it most squarely
 */
public record Refusal(
    String mark, Optional<Side> side, String moment, double seen, String better) {}
