package goniograph.library;

import goniograph.library.Vocabulary.Feet;
import goniograph.library.Vocabulary.Stance;
import goniograph.library.Vocabulary.Supervision;
import goniograph.library.Vocabulary.Surface;
import goniograph.library.Vocabulary.Vision;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Under which conditions an exercise is done; a ladder step may change each of them.
 *
 * @param stance how the feet stand
 * @param vision eyes open or closed
 * @param surface what one stands on
 * @param feet what is on the feet
 * @param headMovement whether the head moves
 * @param support what one holds on to
 * @param supervision who must be there
 * @param figure id of the pose file
 */
public record Conditions(
    Optional<Located<Stance>> stance,
    Optional<Located<Vision>> vision,
    Optional<Located<Surface>> surface,
    Optional<Located<Feet>> feet,
    Optional<Located<Boolean>> headMovement,
    Support support,
    Optional<Located<Supervision>> supervision,
    Optional<Located<String>> figure) {

  /** These laid over others: where both say something, these count. */
  public Conditions over(Conditions base) {
    return new Conditions(
        stance.or(base::stance),
        vision.or(base::vision),
        surface.or(base::surface),
        feet.or(base::feet),
        headMovement.or(base::headMovement),
        support.over(base.support),
        supervision.or(base::supervision),
        figure.or(base::figure));
  }

  /** The balance words by dotted key and as typed: {@code support.need}, {@code stance} … */
  public SortedMap<String, String> balance() {
    SortedMap<String, String> words = new TreeMap<>();
    support.need().ifPresent(need -> words.put("support.need", Spellings.word(need.value())));
    stance.ifPresent(one -> words.put("stance", Spellings.word(one.value())));
    vision.ifPresent(one -> words.put("vision", Spellings.word(one.value())));
    surface.ifPresent(one -> words.put("surface", Spellings.word(one.value())));
    headMovement.ifPresent(moves -> words.put("head_movement", String.valueOf(moves.value())));
    return words;
  }
}
