package goniograph.pose;

import goniograph.body.JointAngles;
import goniograph.body.Reading;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Solves a pose file. Key frames are solved from what was typed; the moments between go in straight
 * lines from one key frame's solved angles to the next, with the contacts that last from the one to
 * the other, and are solved again.
 */
public final class PoseSolver {
  private static final int MOMENTS = 9;
  private static final int AIMINGS = 2;

  private final PoseFile pose;
  private final FrameSolver solver;

  private PoseSolver(PoseFile pose) {
    this.pose = pose;
    this.solver = new FrameSolver(pose);
  }

  /**
   * The scene and its facts; the same file gives the same numbers. Wishes about segments are worked
   * out on the body as it was solved before, twice, as contacts move the body again.
   */
  public static Solved solve(PoseFile pose) {
    Solved solved = new PoseSolver(pose).solve();
    for (int i = 0; i < AIMINGS && pose.aims(); i++) {
      solved = new PoseSolver(Aiming.aimed(pose, solved.scene())).solve();
    }
    return solved;
  }

  private record Frame(String name, Skeleton skeleton, List<Contact> contacts) {}

  private Solved solve() {
    List<Frame> keys = pose.frames().stream().map(this::key).toList();
    List<Frame> motion = motion(keys);
    HeldThings held = new HeldThings(pose, keys.get(0).skeleton, solver.room());
    Scene scene = scene(moments(keys, held), moments(motion, held), held.fixtures(), wrong(held));
    return new Solved(scene, facts(keys, scene.keys(), motion, scene.motion()));
  }

  private Frame key(KeyFrame frame) {
    List<Contact> contacts = pose.contacts(frame);
    return new Frame(frame.name(), solver.solve(pose.angles(frame), contacts), contacts);
  }

  private Optional<Moment> wrong(HeldThings held) {
    List<Frame> frames = pose.wrongWay().map(this::key).stream().toList();
    return moments(frames, held).stream().findFirst();
  }

  private List<Frame> motion(List<Frame> keys) {
    if (keys.size() == 1) {
      return keys;
    }
    int ways = keys.size() - 1;
    int each = Math.max(1, Math.round((MOMENTS - 1f) / ways)); // so that every key frame is met
    return IntStream.rangeClosed(0, ways * each)
        .mapToObj(i -> between(keys, (double) i / each))
        .toList();
  }

  private Frame between(List<Frame> keys, double place) {
    int before = Math.min((int) Math.floor(place + 1e-9), keys.size() - 1);
    double part = place - before;
    if (part < 1e-9) {
      return keys.get(before);
    }
    Frame from = keys.get(before);
    Frame to = keys.get(before + 1);
    List<Contact> contacts =
        from.contacts.stream()
            .flatMap(c -> to.contacts.stream().flatMap(next -> c.into(next).stream()))
            .toList();
    JointAngles angles = read(from).towards(read(to), part);
    return new Frame("", solver.solve(angles, contacts), contacts);
  }

  private JointAngles read(Frame frame) {
    return Reading.of(frame.skeleton, pose.base().turn());
  }

  private static List<Moment> moments(List<Frame> frames, HeldThings held) {
    return frames.stream()
        .map(f -> new Moment(f.name, f.skeleton, held.at(f.skeleton), f.contacts))
        .toList();
  }

  private Scene scene(
      List<Moment> keys, List<Moment> motion, List<Support> fixtures, Optional<Moment> wrong) {
    List<Support> supports = supports();
    supports.addAll(fixtures);
    boolean wallAhead = wallAhead() || !fixtures.isEmpty();
    View view =
        pose.view() == View.AUTO
            ? new BestView(pose, near(), wallAhead, supports).of(keys)
            : pose.view();
    return new Scene(
        pose.id(),
        pose.base().word(),
        pose.body(),
        view.word(),
        pose.camera().orElseGet(() -> view.camera(near(), pose.base(), wallAhead)),
        keys,
        motion,
        supports,
        pose.moving().limbs(),
        pose.moving().trunk(),
        pose.marks(),
        pose.focus(),
        wrong);
  }

  private List<Support> supports() {
    List<Support> supports = new ArrayList<>();
    for (Placed placed : solver.room().all()) {
      boolean carries =
          pose.frames().stream()
              .flatMap(frame -> pose.contacts(frame).stream())
              .anyMatch(c -> placed.wish().targets().contains(c.target()) && c.part().root());
      supports.add(new Support(placed.kind().word(), placed.boxes(), carries));
    }
    return supports;
  }

  /** The side the viewer sees: away from what stands beside, else the side that alone moves. */
  private Side near() {
    Optional<Side> beside =
        pose.supports().stream().flatMap(wish -> wish.side().stream()).findFirst();
    boolean leftAlone = pose.moving().right().isEmpty() && !pose.moving().left().isEmpty();
    return beside.map(Side::other).orElse(leftAlone ? Side.LEFT : Side.RIGHT);
  }

  private boolean wallAhead() {
    return pose.supports().stream()
        .anyMatch(wish -> wish.kind() == SupportKind.WALL && wish.side().isEmpty());
  }

  private SceneFacts facts(
      List<Frame> keys, List<Moment> keyMoments, List<Frame> motion, List<Moment> motionMoments) {
    FactsMaker maker = new FactsMaker(pose, solver);
    List<MomentFacts> keyFacts = facts(maker, keys, keyMoments);
    List<TypedDifference> differences =
        IntStream.range(0, keys.size())
            .boxed()
            .flatMap(
                i -> maker.differences(pose.frames().get(i), keyFacts.get(i).angles()).stream())
            .toList();
    return new SceneFacts(
        pose.id(),
        keyFacts,
        facts(maker, motion, motionMoments),
        differences,
        maker.distances(keys.get(0).skeleton),
        maker.seatHeightCm(),
        maker.stepHeightCm());
  }

  private static List<MomentFacts> facts(
      FactsMaker maker, List<Frame> frames, List<Moment> moments) {
    return IntStream.range(0, frames.size())
        .mapToObj(i -> maker.moment(moments.get(i), frames.get(i).contacts))
        .toList();
  }
}
