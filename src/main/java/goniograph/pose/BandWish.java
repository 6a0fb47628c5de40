package goniograph.pose;

import goniograph.body.Side;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import java.util.List;
import java.util.Optional;

/**
 * An elastic band as a pose file asks for it: from hand to hand, or from something fast to the
 * hands or round a part of the body.
 *
 * @param from what holds it besides the hands
 * @param round what it is laid round, where not only the hands
 * @param heightCm the height above the floor where it is fastened; empty for level with the chest,
 *     or with the part it is laid round
 * @param distanceCm horizontally from the hands, or the part it is laid round, in the start pose to
 *     the door; a support has a distance of its own
 */
public record BandWish(
    From from, Optional<Round> round, Optional<Double> heightCm, double distanceCm)
    implements PropWish {
  static final double DOOR_DISTANCE = 50;

  /** What holds a band besides the hands. */
  public enum From {
    HANDS,
    DOOR,
    FEET,
    SUPPORT
  }

  /** What a band is laid round; {@code foot} is the right one. */
  public enum Round {
    FOOT,
    RIGHT_FOOT,
    LEFT_FOOT,
    RIGHT_ANKLE,
    LEFT_ANKLE,
    BOTH_ANKLES,
    BOTH_THIGHS;

    /** True where it is a closed loop round both legs. */
    boolean loop() {
      return this == BOTH_ANKLES || this == BOTH_THIGHS;
    }

    Side side() {
      return this == LEFT_FOOT || this == LEFT_ANKLE ? Side.LEFT : Side.RIGHT;
    }

    private Round mirrored() {
      return switch (this) {
        case FOOT, RIGHT_FOOT -> LEFT_FOOT;
        case LEFT_FOOT -> RIGHT_FOOT;
        case RIGHT_ANKLE -> LEFT_ANKLE;
        case LEFT_ANKLE -> RIGHT_ANKLE;
        default -> this;
      };
    }
  }

  @Override
  public String word() {
    return "band";
  }

  @Override
  public BandWish mirrored() {
    return new BandWish(from, round.map(Round::mirrored), heightCm, distanceCm);
  }

  @Override
  public Prop at(Holding holding) {
    return new Band(this, holding).prop();
  }

  @Override
  public List<Support> fixtures(Holding holding) {
    return from == From.DOOR ? List.of(new Band(this, holding).door()) : List.of();
  }

  static BandWish read(Form form) {
    return new BandWish(
        form.optional("from")
            .as(Spellings.oneOf(From.class))
            .map(Located::value)
            .orElse(From.HANDS),
        form.optional("round").as(Spellings.oneOf(Round.class)).map(Located::value),
        SupportReader.cm(form, "height", 0, 250),
        SupportReader.cm(form, "distance", 0, 300).orElse(DOOR_DISTANCE));
  }
}
