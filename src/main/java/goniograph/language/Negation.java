package goniograph.language;

import java.util.List;

/**
 * Tells what a text says from what it warns of: "do not hold your breath". A negation reaches a
 * phrase if it stands before it in the same clause, a few words away at most.
 */
public final class Negation {
  private static final int REACH = 6;

  /** Characters that hold as many words as a negation reaches. */
  private static final int NEAR = 200;

  private static final List<String> CLAUSE_ENDS =
      List.of(".", ",", ";", ":", "!", "?", "،", "؛", "؟", "।", "…", "–", "—");

  private final WordFinder negations;
  private final WordFinder turns;

  private Negation(Words words) {
    negations = words.finder("negation");
    turns = words.finder("negation.end");
  }

  /** The negations of a language. */
  public static Negation of(Words words) {
    return new Negation(words);
  }

  /** Whether what begins at a character of the text is negated. */
  public boolean reaches(String text, int from) {
    List<Token> tokens = Token.of(text.substring(Math.max(0, from - NEAR), from));
    int least = Math.max(0, tokens.size() - REACH);
    for (int i = tokens.size() - 1; i >= least; i--) {
      if (negations.length(tokens, i) > 0) {
        return true;
      }
      if (CLAUSE_ENDS.contains(tokens.get(i).folded()) || turns.length(tokens, i) > 0) {
        return false;
      }
    }
    return false;
  }
}
