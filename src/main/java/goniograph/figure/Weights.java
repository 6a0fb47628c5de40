package goniograph.figure;

/**
 * Line weights on paper, in mm. The line width of a pen is never scaled with the drawing.
 *
 * @param near the outline of the body
 * @param far the outline of the side turned away
 * @param working the outline of the working limb
 * @param inner lines within a part
 * @param support the outline of chairs, counters and the like
 * @param floor the line of the floor
 * @param halo white left free round a part that lies over another
 * @param hatch the lines that mark the working limb
 * @param pitch the distance between those
 * @param arrow the shaft of a movement arrow
 * @param lettering the height of lettering, as a font size
 */
public record Weights(
    double near,
    double far,
    double working,
    double inner,
    double support,
    double floor,
    double halo,
    double hatch,
    double pitch,
    double arrow,
    double lettering) {

  /** The standard sheet: outline 1.2 pt, working limb 2.3 pt, arrow 2 pt, support 1.5 pt. */
  public static final Weights STANDARD =
      new Weights(.42, .34, .80, .28, .53, .25, .34, .22, 1.2, .71, 3.9);

  /** The large-print sheet. */
  public static final Weights LARGE = STANDARD.times(1.3);

  /** The picture-first sheet. */
  public static final Weights PICTURE = STANDARD.times(1.4);

  private Weights times(double k) {
    return new Weights(
        k * near,
        k * far,
        k * working,
        k * inner,
        k * support,
        k * floor,
        k * halo,
        k * hatch,
        k * pitch,
        k * arrow,
        k * lettering);
  }

  double outline(Role role) {
    return switch (role) {
      case NEAR, PROP -> near;
      case FAR -> far;
      case MOVING -> working;
      case SUPPORT -> support;
    };
  }
}
