package goniograph.dose;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Why a text is not a value.
 *
 * @param kind what kind of mistake
 * @param what what is wrong, in one sentence, naming the text
 * @param spellings right spellings to offer, most likely first; each of them reads without fault
 */
public record Fault(Kind kind, String what, List<String> spellings) {
  public Fault {
    spellings = List.copyOf(spellings);
  }

  /** Kinds of mistakes in a number, a quantity or a word. */
  public enum Kind {
    EMPTY,
    UNIT_MISSING,
    UNIT_UNKNOWN,
    UNIT_UNFIT,
    UNIT_UNWANTED,
    SPACE,
    CLOCK_TIME,
    QUOTE_MARK,
    DECIMAL_COMMA,
    LEADING_ZERO,
    NUMBER_SPELLING,
    RANGE_SPELLING,
    RANGE_REVERSED,
    RANGE_UNWANTED,
    FOREIGN_DIGITS,
    NEGATIVE,
    OUT_OF_BOUNDS,
    TOO_FINE,
    TWO_NUMBERS,
    NOT_A_NUMBER,
    NOT_WHOLE,
    UNKNOWN_WORD
  }

  /** How to mend it: {@code write `1.5 min` or `90 s`}. */
  public String mend() {
    return spellings.stream()
        .map(spelling -> "`" + spelling + "`")
        .collect(Collectors.joining(" or ", "write ", ""));
  }
}
