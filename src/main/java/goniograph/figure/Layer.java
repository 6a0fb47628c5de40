package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Paints of a panel that belong together; later layers cover earlier ones.
 *
 * @param what what they show
 * @param paints in the order they are painted
 */
record Layer(What what, List<Paint> paints) {
  Layer {
    paints = List.copyOf(paints);
  }

  /** What a layer shows. */
  enum What {
    FLOOR,
    BODY,
    TARGET,
    START,
    PLUMB,
    BALANCE,
    LANDMARK,
    ARROW,
    ANGLE,
    WORD,
    NUMBER,
    CROSS;

    /** True for what may stand nowhere but where it is free. */
    boolean lettering() {
      return this == WORD || this == NUMBER;
    }
  }

  /** The pieces that are inked; white left free round them is not. */
  List<Geometry> ink() {
    List<Geometry> ink = new ArrayList<>();
    for (Paint paint : paints) {
      if (!paint.colour().equals(Style.PAPER)) {
        ink.add(
            paint instanceof Paint.Line line
                ? Hulls.widened(line.shape(), line.width() / 2)
                : paint.shape());
      }
    }
    return ink;
  }

  /** What the ink fills. */
  Envelope bounds() {
    Envelope bounds = new Envelope();
    ink().forEach(ink -> bounds.expandToInclude(ink.getEnvelopeInternal()));
    return bounds;
  }

  /** The same without what lies wholly outside a frame. */
  Layer within(Envelope frame) {
    return new Layer(
        what,
        paints.stream()
            .filter(paint -> frame.intersects(paint.shape().getEnvelopeInternal()))
            .toList());
  }

  /** The same elsewhere. */
  Layer moved(AffineTransformation by) {
    return new Layer(what, paints.stream().map(paint -> paint.moved(by)).toList());
  }
}
