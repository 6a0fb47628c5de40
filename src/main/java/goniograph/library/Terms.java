package goniograph.library;

import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;

/**
 * The words a language's texts are held to. They come on top of the checker's own lists.
 *
 * @param language the language tag
 * @param agreed the word to use for a thing
 * @param accepted words of the checker's own lists that this clinic lets stand
 * @param forbidden words that are never printed for patients
 * @param ambiguous words that readers take in more than one way
 * @param frightening words that frighten or speak of harm
 * @param hard long or learned words
 */
public record Terms(
    String language,
    List<Agreed> agreed,
    List<Located<String>> accepted,
    List<Avoided> forbidden,
    List<Avoided> ambiguous,
    List<Avoided> frightening,
    List<Avoided> hard) {
  public Terms {
    agreed = List.copyOf(agreed);
    accepted = List.copyOf(accepted);
    forbidden = List.copyOf(forbidden);
    ambiguous = List.copyOf(ambiguous);
    frightening = List.copyOf(frightening);
    hard = List.copyOf(hard);
  }

  /** The word for a source word. */
  public record Agreed(Located<String> word, Located<String> say) {}

  /** A word to avoid, what is written instead, and why. */
  public record Avoided(
      Located<String> word, Optional<Located<String>> say, Optional<Located<String>> why) {}
}
