package goniograph.dose;

/** What a field of a dose holds. */
public sealed interface DoseValue {

  /** A plain count. */
  record Count(int number) implements DoseValue {}

  /** A quantity. */
  record Amount(Quantity quantity) implements DoseValue {}

  /** A range of scores from 0 to 10. */
  record Scores(Range<Integer> range) implements DoseValue {}

  /** Yes or no. */
  record Flag(boolean yes) implements DoseValue {}

  /** An id or a word of a closed list. */
  record Word(String word) implements DoseValue {}

  /** As it is spelled in front matter. */
  default String spelling() {
    if (this instanceof Count count) {
      return String.valueOf(count.number());
    } else if (this instanceof Amount amount) {
      return amount.quantity().toString();
    } else if (this instanceof Scores scores) {
      return scores.range().toString();
    } else if (this instanceof Flag flag) {
      return String.valueOf(flag.yes());
    }
    return ((Word) this).word();
  }
}
