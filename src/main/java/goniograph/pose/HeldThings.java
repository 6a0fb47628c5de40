package goniograph.pose;

import goniograph.body.Side;
import goniograph.body.Skeleton;
import java.util.Arrays;
import java.util.List;

/** The props of a pose: they follow the body through every moment. */
final class HeldThings {
  private final PoseFile pose;
  private final Skeleton start;
  private final Room room;

  /**
   * The props of a pose.
   *
   * @param start the body in the first key frame, which says where an anchor is fast
   */
  HeldThings(PoseFile pose, Skeleton start, Room room) {
    this.pose = pose;
    this.start = start;
    this.room = room;
  }

  /** All props at one moment. */
  List<Prop> at(Skeleton now) {
    return pose.props().stream().map(wish -> wish.at(holding(wish, now))).toList();
  }

  /** What props are fastened to. */
  List<Support> fixtures() {
    return pose.props().stream()
        .flatMap(wish -> wish.fixtures(holding(wish, start)).stream())
        .toList();
  }

  private Holding holding(PropWish wish, Skeleton now) {
    return new Holding(now, start, room, hands(wish));
  }

  /** The hands that hold it in any key frame; both where the pose says nothing. */
  private List<Side> hands(PropWish wish) {
    List<Side> hands = Arrays.stream(Side.values()).filter(side -> holds(side, wish)).toList();
    return hands.isEmpty() ? List.of(Side.values()) : hands;
  }

  private boolean holds(Side side, PropWish wish) {
    return pose.frames().stream()
        .flatMap(frame -> pose.contacts(frame).stream())
        .filter(contact -> contact.target().equals(wish.word()))
        .anyMatch(contact -> contact.side().filter(side::equals).isPresent());
  }
}
