package goniograph.pose;

import goniograph.body.Skeleton;
import java.util.List;

/**
 * The body and what it holds at one moment of the movement, with contacts solved.
 *
 * @param name {@code start}, {@code via-1}, {@code end}, or {@code pose} where nothing moves; ""
 *     between key frames
 * @param skeleton the solved body
 * @param props what is held
 */
public record Moment(String name, Skeleton skeleton, List<Prop> props) {
  public Moment {
    props = List.copyOf(props);
  }
}
