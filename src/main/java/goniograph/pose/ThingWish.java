package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Vec;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A thing as a pose file asks for it: a ball, a towel, a stick, a weight.
 *
 * @param kind what it is
 * @param place where it is
 * @param sizeCm its length, of a ball its diameter
 * @param massKg its mass, where the pose types it
 * @param folded true for a towel that lies folded, false for one that is rolled
 */
public record ThingWish(
    ThingKind kind, HeldAt place, double sizeCm, Optional<Double> massKg, boolean folded)
    implements PropWish {

  /** How a towel is laid. */
  private enum Laid {
    ROLLED,
    FOLDED
  }

  static ThingWish read(ThingKind kind, Form form) {
    return new ThingWish(
        kind,
        form.optional("place")
            .as(Spellings.oneOf(HeldAt.class))
            .map(Located::value)
            .orElse(HeldAt.HANDS),
        SupportReader.cm(form, "size", 1, 200).orElse(kind.usualSizeCm()),
        form.optional("mass").as(Kilograms.SPELLING).map(Located::value),
        kind == ThingKind.TOWEL
            && form.optional("laid")
                .as(Spellings.oneOf(Laid.class))
                .filter(laid -> laid.value() == Laid.FOLDED)
                .isPresent());
  }

  @Override
  public String word() {
    return kind.word();
  }

  @Override
  public boolean onFloor() {
    return place == HeldAt.ON_FLOOR;
  }

  @Override
  public ThingWish mirrored() {
    return new ThingWish(kind, place.mirrored(), sizeCm, massKg, folded);
  }

  @Override
  public Prop at(Holding holding) {
    List<Shape> shapes = new ArrayList<>();
    Hold.of(holding, this).forEach(hold -> shapes.addAll(kind.shapes(hold, this)));
    return new Prop(word(), shapes, pulls(holding), Optional.empty(), massKg);
  }

  /** What hangs in both hands is shared by them; what lies on the body loads no joint. */
  private List<Pull> pulls(Holding holding) {
    if (place.onBody() || onFloor()) {
      return List.of();
    }
    double share = kind.single() ? 1 : 1.0 / holding.hands().size();
    return holding.hands().stream().map(side -> pull(holding, side, share)).toList();
  }

  private static Pull pull(Holding holding, Side side, double share) {
    Vec down = Vec.UP.times(-share);
    return new Pull(Limb.HAND, side, Landmarks.palm(holding.now(), side), down);
  }
}
