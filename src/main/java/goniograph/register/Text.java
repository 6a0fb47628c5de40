package goniograph.register;

import java.util.Optional;

/**
 * What stands to be signed, or is compared with what was signed.
 *
 * @param digest of the text as it stands
 * @param source digest of the source text as it stands, for statements and phrases in another
 *     language; empty otherwise
 */
public record Text(String digest, Optional<String> source) {

  /** A text of its own. */
  public static Text source(String digest) {
    return new Text(digest, Optional.empty());
  }

  /** A translation of a source text. */
  public static Text translation(String digest, String source) {
    return new Text(digest, Optional.of(source));
  }
}
