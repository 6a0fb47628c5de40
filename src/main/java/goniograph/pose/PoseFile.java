package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Body;
import goniograph.body.JointAngles;
import goniograph.body.Side;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A pose as an author wrote it, for one side of the body.
 *
 * @param id the pose's id
 * @param at the place of the id
 * @param base what the pose starts from
 * @param body the person
 * @param view the named view
 * @param camera a view typed as angles, which then wins
 * @param supports what carries or steadies the body, the floor aside
 * @param props what is held or lies against the body
 * @param contacts what touches in every frame
 * @param typed angles of every frame
 * @param wishes how segments lie in the world in every frame
 * @param frames the key frames in order; one where nothing moves
 * @param moving what is marked as moving
 * @param marks what is drawn on top
 * @param focus the part of the body that alone is shown
 * @param wrong how it is not to be done: what is typed here changes the last frame
 * @param balanced true where the body shall shift until it stands over its feet
 */
public record PoseFile(
    String id,
    Span at,
    BasePosture base,
    Body body,
    View view,
    Optional<Camera> camera,
    List<SupportWish> supports,
    List<PropWish> props,
    List<Contact> contacts,
    List<TypedAngle> typed,
    List<SegmentWish> wishes,
    List<KeyFrame> frames,
    Moving moving,
    List<Mark> marks,
    Optional<Focus> focus,
    Optional<KeyFrame> wrong,
    boolean balanced) {
  public PoseFile {
    supports = List.copyOf(supports);
    props = List.copyOf(props);
    contacts = List.copyOf(contacts);
    typed = List.copyOf(typed);
    wishes = List.copyOf(wishes);
    frames = List.copyOf(frames);
    marks = List.copyOf(marks);
  }

  /** A frame's angles: the base posture's, then the pose's, then its own; the last wins. */
  JointAngles angles(KeyFrame frame) {
    return base.angles(kneeling())
        .over(TypedAngle.angles(typed))
        .over(TypedAngle.angles(frame.typed()))
        .over(frame.aimed());
  }

  /** The side that kneels, where one alone does. */
  private Side kneeling() {
    boolean right =
        contacts.stream()
            .filter(c -> c.part() == Part.KNEE)
            .noneMatch(c -> c.side().equals(Optional.of(Side.LEFT)));
    return right ? Side.RIGHT : Side.LEFT;
  }

  /** The wrong way whole: the last frame with what is wrong about it. */
  Optional<KeyFrame> wrongWay() {
    KeyFrame last = frames.get(frames.size() - 1);
    return wrong.map(own -> own.over(last));
  }

  /** What an author typed for a frame: what a frame types hides what the pose typed. */
  List<TypedAngle> typed(KeyFrame frame) {
    List<TypedAngle> all = new ArrayList<>(frame.typed());
    typed.stream()
        .filter(t -> frame.typed().stream().noneMatch(own -> own.freedom().equals(t.freedom())))
        .forEach(all::add);
    return all;
  }

  /**
   * How segments shall lie in a frame, from the trunk outwards: what a frame types, angle or wish,
   * hides the pose's wish for the same segment.
   */
  public List<SegmentWish> wishes(KeyFrame frame) {
    List<SegmentWish> all = new ArrayList<>(frame.wishes());
    wishes.stream().filter(frame::saysNothingOf).forEach(all::add);
    all.sort(Comparator.comparing(SegmentWish::segment));
    return all;
  }

  /** True where some angles are to be worked out from how segments lie. */
  boolean aims() {
    return Stream.concat(frames.stream(), wrongWay().stream())
        .anyMatch(frame -> !wishes(frame).isEmpty());
  }

  /** What touches in a frame, side by side: its own contacts first, then those of every frame. */
  List<Contact> contacts(KeyFrame frame) {
    List<Contact> all = new ArrayList<>(frame.contacts());
    all.addAll(contacts);
    return all.stream().flatMap(contact -> contact.split().stream()).toList();
  }

  /** The support that a contact's target names, whole or by one of its places. */
  Optional<SupportWish> support(String target) {
    return supports.stream().filter(wish -> wish.targets().contains(target)).findFirst();
  }

  /** The height of what is touched, in body heights; 0 for the floor. */
  double height(Contact contact) {
    return body.fraction(support(contact.target()).map(SupportWish::heightCm).orElse(0.0));
  }

  /** The same pose with other key frames. */
  PoseFile with(List<KeyFrame> others, Optional<KeyFrame> otherWrong) {
    return new PoseFile(
        id,
        at,
        base,
        body,
        view,
        camera,
        supports,
        props,
        contacts,
        typed,
        wishes,
        others,
        moving,
        marks,
        focus,
        otherWrong,
        balanced);
  }

  /** The same pose seen in another view. */
  public PoseFile seen(View other) {
    return new PoseFile(
        id,
        at,
        base,
        body,
        other,
        Optional.empty(),
        supports,
        props,
        contacts,
        typed,
        wishes,
        frames,
        moving,
        marks,
        focus,
        wrong,
        balanced);
  }

  /** The pose for the other side: joints, contacts, supports, view and marks swap sides. */
  public PoseFile mirrored() {
    return new PoseFile(
        id,
        at,
        base.mirrored(),
        body,
        view.mirrored(),
        camera.map(c -> View.mirrored(c, base)),
        supports.stream().map(SupportWish::mirrored).toList(),
        props.stream().map(PropWish::mirrored).toList(),
        contacts.stream().map(Contact::mirrored).toList(),
        typed.stream().map(TypedAngle::mirrored).toList(),
        wishes.stream().map(SegmentWish::mirrored).toList(),
        frames.stream().map(KeyFrame::mirrored).toList(),
        moving.mirrored(),
        marks.stream().map(Mark::mirrored).toList(),
        focus.map(Focus::mirrored),
        wrong.map(KeyFrame::mirrored),
        balanced);
  }
}
