package goniograph.register;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A claim that someone stands by a text.
 *
 * @param role in which capacity
 * @param by role id, never a name
 * @param on the day it was signed
 * @param qualified false where a translation was signed by someone without the qualification, so
 *     that the sheet must say so
 * @param digest of the text that was signed
 * @param source digest of the source text that a translation was made from; empty for a source text
 */
public record Signature(
    Role role, String by, LocalDate on, boolean qualified, String digest, Optional<String> source) {

  /** Whether it was given for exactly this text, made from exactly this source. */
  boolean covers(Text text) {
    return digest.equals(text.digest()) && source.equals(text.source());
  }
}
