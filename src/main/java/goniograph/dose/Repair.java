package goniograph.dose;

import goniograph.dose.Fault.Kind;
import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * One kind of misspelling and its mends.
 *
 * @param kind what kind of mistake it is
 * @param what what is wrong, said of the text
 * @param wrong what gives it away
 * @param mends for the text and the place found, the texts it may mean; empty if it cannot be told
 */
record Repair(Kind kind, String what, Pattern wrong, Mend mends) {

  /** Makes the texts meant. */
  interface Mend {
    List<String> of(String text, MatchResult found);
  }

  /** A mend of every place found, as in {@link java.util.regex.Matcher#replaceAll(String)}. */
  static Repair replacing(Kind kind, String what, String wrong, String replacement) {
    Pattern pattern = Pattern.compile(wrong);
    return new Repair(
        kind,
        what,
        pattern,
        (text, found) -> List.of(pattern.matcher(text).replaceAll(replacement)));
  }

  /** A mend of the first place found. */
  static Repair first(
      Kind kind, String what, String wrong, Function<MatchResult, List<String>> meant) {
    return new Repair(
        kind,
        what,
        Pattern.compile(wrong),
        (text, found) ->
            meant.apply(found).stream()
                .map(word -> text.substring(0, found.start()) + word + text.substring(found.end()))
                .toList());
  }

  boolean applies(String text) {
    return wrong.matcher(text).find();
  }

  List<String> apply(String text) {
    return wrong
        .matcher(text)
        .results()
        .findFirst()
        .map(found -> mends.of(text, found))
        .orElse(List.of());
  }
}
