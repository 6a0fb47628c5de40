package goniograph.library;

import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;

/**
 * The words a language's texts are held to.
 *
 * @param language the language tag
 * @param agreed the word to use for a thing
 * @param accepted words that are right although they look like faults
 * @param forbidden words that are never printed for patients
 */
public record Terms(
    String language,
    List<Agreed> agreed,
    List<Located<String>> accepted,
    List<Forbidden> forbidden) {
  public Terms {
    agreed = List.copyOf(agreed);
    accepted = List.copyOf(accepted);
    forbidden = List.copyOf(forbidden);
  }

  /** The word for a source word. */
  public record Agreed(Located<String> word, Located<String> say) {}

  /** A word that is never printed, and what is written instead. */
  public record Forbidden(Located<String> word, Optional<Located<String>> say) {}
}
