package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Side;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The named views. Views from a side and from between are taken from the near side: away from what
 * stands beside the person, else from the moving side, else from the right.
 */
public enum View {
  SIDE(new Camera(14, 7)),
  SIDE_FLAT(new Camera(0, 3)),
  SIDE_LEFT(new Camera(166, 7)),
  SIDE_RIGHT(new Camera(14, 7)),
  FRONT(new Camera(90, 8)),
  BACK(new Camera(-90, 8)),
  THREE_QUARTER(new Camera(48, 10)),
  OBLIQUE_TOP(new Camera(62, 38)),
  SIDE_LYING(new Camera(0, 24)),
  /** The view that shows most; which that is says {@link BestView}. */
  AUTO(new Camera(14, 7));

  private static final Camera SIDE_LOW = new Camera(5, 12);
  private static final Camera SIDE_TO_WALL = new Camera(-17, 8);

  private final Camera usual;

  View(Camera usual) {
    this.usual = usual;
  }

  /**
   * The view as angles.
   *
   * @param near the side seen, for views that have one
   * @param wallAhead true where a wall or door stands ahead, whose far face must not be seen
   */
  Camera camera(Side near, BasePosture base, boolean wallAhead) {
    Camera fromRight = this == SIDE ? side(base, wallAhead) : usual;
    boolean hasSide =
        this == SIDE || this == SIDE_FLAT || this == THREE_QUARTER || this == OBLIQUE_TOP;
    return hasSide && near == Side.LEFT ? mirrored(fromRight, BasePosture.STANDING) : fromRight;
  }

  private Camera side(BasePosture base, boolean wallAhead) {
    return wallAhead
        ? SIDE_TO_WALL
        : switch (base) {
          case LYING_ON_BACK, LYING_ON_FRONT, HANDS_AND_KNEES, LONG_SITTING -> SIDE_LOW;
          default -> usual;
        };
  }

  /** The view that shows the mirrored body as this one shows the body. */
  static Camera mirrored(Camera camera, BasePosture base) {
    double yaw = base == base.mirrored() ? 180 - camera.yaw() : -camera.yaw();
    return new Camera(yaw, camera.elevation());
  }

  /** The view that shows the mirrored body as this one shows the body. */
  View mirrored() {
    return switch (this) {
      case SIDE_LEFT -> SIDE_RIGHT;
      case SIDE_RIGHT -> SIDE_LEFT;
      default -> this;
    };
  }

  /** The view of a pose that names none. */
  static View usual(BasePosture base) {
    return switch (base) {
      case LYING_ON_LEFT_SIDE, LYING_ON_RIGHT_SIDE -> SIDE_LYING;
      default -> SIDE;
    };
  }

  /** The author's word, for instance {@code three-quarter}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The view of a word. */
  public static Optional<View> of(String word) {
    return Arrays.stream(values()).filter(view -> view.word().equals(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(View::word).toList();
  }
}
