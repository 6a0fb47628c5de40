package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.library.Vocabulary.SupportSide;
import goniograph.matter.Located;
import java.util.Optional;

/**
 * What one holds on to.
 *
 * @param need what the hands do there
 * @param object phrase id of the object
 * @param height its height, in cm
 * @param reach how far from the body it may stand, in cm
 * @param side on which side
 */
public record Support(
    Optional<Located<SupportNeed>> need,
    Optional<Located<String>> object,
    Optional<Located<Range<Quantity>>> height,
    Optional<Located<Range<Quantity>>> reach,
    Optional<Located<SupportSide>> side) {
  /** Nothing said. */
  public static final Support NONE =
      new Support(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** This laid over another: where both say something, this counts. */
  public Support over(Support base) {
    return new Support(
        need.or(base::need),
        object.or(base::object),
        height.or(base::height),
        reach.or(base::reach),
        side.or(base::side));
  }
}
