package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import goniograph.pose.Focus;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;

/** What of a scene a drawing shows: all of it, or the part that the author put in focus. */
record Crop(Scene scene, Projection paper) {
  /** A body height is drawn no larger than this, mm; in focus larger. */
  private static final double LARGEST = .42 * 170;

  private static final double FOCUSED = .80 * 170;
  private static final double HAND_OR_FOOT = 2.4 * 170;

  /** Of a support, this much beyond the body belongs to the frame, in body heights. */
  private static final double SUPPORT_BESIDE = .25;

  private static final double SUPPORT_ABOVE = .05;

  /** Parts that lie farther from where they should be than this, in body heights, are wrong. */
  private static final double WRONG = .02;

  /** What is wrong is never shown closer than this, in body heights. */
  private static final double LEAST = .28;

  private static final Set<Kind> UPPER =
      EnumSet.of(Kind.HEAD, Kind.TRUNK, Kind.UPPER_ARM, Kind.FOREARM, Kind.HAND);
  private static final Set<Kind> LOWER = EnumSet.of(Kind.THIGH, Kind.SHANK, Kind.FOOT);
  private static final Set<Kind> ARM = EnumSet.of(Kind.UPPER_ARM, Kind.FOREARM, Kind.HAND);

  /** The largest scale, mm for a body height. */
  static double largest(Scene scene) {
    return scene
        .focus()
        .map(
            focus ->
                switch (focus.region()) {
                  case HEAD, UPPER_BODY, LEGS, ARM -> FOCUSED;
                  case HAND, FOOT -> HAND_OR_FOOT;
                })
        .orElse(LARGEST);
  }

  /** Of a hand or a foot in focus nothing else of the body is shown than what it hangs on. */
  static boolean shows(Optional<Focus> focus, Part part) {
    Kind kind = part.id().kind();
    return focus.isEmpty()
        || !kind.ofBody()
        || switch (focus.get().region()) {
          case HEAD, UPPER_BODY, LEGS, ARM -> true;
          case HAND -> of(focus.get(), part) && (kind == Kind.HAND || kind == Kind.FOREARM);
          case FOOT -> of(focus.get(), part) && (kind == Kind.FOOT || kind == Kind.SHANK);
        };
  }

  private static boolean of(Focus focus, Part part) {
    return of(part, focus.side().orElse(Side.RIGHT));
  }

  /** What is shown of one moment. */
  Envelope of(Moment moment, Stage stage) {
    return scene
        .focus()
        .map(focus -> focused(focus, moment.skeleton(), stage))
        .orElseGet(() -> whole(stage));
  }

  /** Body and what is held, and supports as far as they are near, and all that is below. */
  private Envelope whole(Stage stage) {
    Envelope body = stage.bounds(Stage::ofPerson);
    Envelope reach = new Envelope(body);
    reach.expandBy(paper.mm(SUPPORT_BESIDE), paper.mm(SUPPORT_ABOVE));
    Envelope whole = new Envelope(body);
    for (Part part : stage.parts()) {
      if (!Stage.ofPerson(part)) {
        Envelope support = part.outline().getEnvelopeInternal();
        Envelope shown = new Envelope(reach);
        shown.expandToInclude(reach.centre().x, Math.max(reach.getMaxY(), support.getMaxY()));
        whole.expandToInclude(support.intersection(shown));
      }
    }
    return whole;
  }

  private Envelope focused(Focus focus, Skeleton s, Stage stage) {
    Side side = focus.side().orElse(Side.RIGHT);
    return switch (focus.region()) {
      case HEAD -> {
        Envelope head = kinds(stage, EnumSet.of(Kind.HEAD));
        for (Side shoulder : Side.values()) {
          head.expandToInclude(paper.at(Landmarks.shoulder(s, shoulder)));
        }
        head.expandToInclude(paper.at(s.spine(SpineJoint.T5).point(new Vec(.08, 0, 0))));
        yield head;
      }
      case UPPER_BODY -> kinds(stage, UPPER);
      case LEGS -> kinds(stage, LOWER);
      case ARM -> stage.bounds(part -> ARM.contains(part.id().kind()) && of(part, side));
      case HAND -> end(stage, Kind.HAND, side, Landmarks.elbow(s, side), Landmarks.wrist(s, side));
      case FOOT -> end(stage, Kind.FOOT, side, Landmarks.knee(s, side), Landmarks.ankle(s, side));
    };
  }

  private static boolean of(Part part, Side side) {
    return part.id().side().filter(own -> own == side).isPresent();
  }

  private static Envelope kinds(Stage stage, Set<Kind> kinds) {
    return stage.bounds(part -> kinds.contains(part.id().kind()));
  }

  /** The end of a limb and a third of what it hangs on. */
  private Envelope end(Stage stage, Kind kind, Side side, Vec from, Vec to) {
    Envelope end =
        stage.bounds(
            part -> part.id().kind() == Kind.PROP || part.id().kind() == kind && of(part, side));
    end.expandToInclude(paper.at(from.towards(to, .67)));
    return end;
  }

  /** The parts of a stage that lie elsewhere than in a body as it should be, and a little round. */
  static Envelope changed(Stage stage, List<Part> right, Projection paper) {
    Envelope changed = stage.bounds(part -> right.stream().anyMatch(r -> differs(r, part, paper)));
    if (changed.isNull()) {
      return stage.bounds(Stage::ofPerson);
    }
    changed.expandBy(
        Math.max(0, (paper.mm(LEAST) - changed.getWidth()) / 2),
        Math.max(0, (paper.mm(LEAST) - changed.getHeight()) / 2));
    return changed;
  }

  private static boolean differs(Part right, Part part, Projection paper) {
    return right.id().equals(part.id())
        && right
                .outline()
                .getEnvelopeInternal()
                .centre()
                .distance(part.outline().getEnvelopeInternal().centre())
            > paper.mm(WRONG);
  }
}
