/**
 * Floor 4: a pose file becomes a solved scene: key frames with their contacts kept, supports, props
 * and the facts that rules ask for.
 */
@NullMarked
package goniograph.pose;

import org.jspecify.annotations.NullMarked;
