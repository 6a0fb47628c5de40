package goniograph.language;

import java.util.Optional;

/**
 * Phrases of one language that tell a patient to do something which needs care, by what it is: the
 * lists {@code cue.*} of its words. A phrase counts where no word of negation reaches it, and where
 * it is no part of a silent phrase.
 */
public final class Cues {
  private final Words words;
  private final Negation negation;

  private Cues(Words words) {
    this.words = words;
    this.negation = Negation.of(words);
  }

  /** The cues of the language with this tag; none where there is no such language. */
  public static Cues of(String tag) {
    return new Cues(Language.of(tag).map(Words::of).orElse(Words.NONE));
  }

  /** The first place in a text that gives this cue, for instance {@code eyes-closed}. */
  public Optional<WordFinder.Found> find(String name, String text) {
    return words.senseFinder("cue." + name).find(text).stream()
        .filter(found -> !negation.reaches(text, found.from()))
        .findFirst();
  }
}
