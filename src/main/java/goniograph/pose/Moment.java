package goniograph.pose;

import goniograph.body.Skeleton;
import java.util.List;

/**
 * The body, what it holds and what it touches at one moment of the movement, with contacts solved.
 *
 * @param name {@code start}, {@code via-1}, {@code end}, or {@code pose} where nothing moves; ""
 *     between key frames
 * @param skeleton the solved body
 * @param props what is held
 * @param contacts what touches, side by side
 */
public record Moment(String name, Skeleton skeleton, List<Prop> props, List<Contact> contacts) {
  public Moment {
    props = List.copyOf(props);
    contacts = List.copyOf(contacts);
  }

  /** A moment in which nothing is known to touch. */
  public Moment(String name, Skeleton skeleton, List<Prop> props) {
    this(name, skeleton, props, List.of());
  }
}
