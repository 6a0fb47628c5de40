package goniograph.register;

import java.time.LocalDate;

/**
 * What someone says about themselves when they sign.
 *
 * @param role in which capacity they sign
 * @param by their role id
 * @param on the day
 * @param qualified false where a translator or language reviewer lacks the qualification
 */
public record Claim(Role role, String by, LocalDate on, boolean qualified) {

  Signature under(Text text) {
    return new Signature(role, by, on, qualified, text.digest(), text.source());
  }
}
