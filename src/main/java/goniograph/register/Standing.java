package goniograph.register;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How things stand with one entry in one language.
 *
 * @param entry the entry's id
 * @param language the language tag
 * @param digest of everything the sheet prints; the same digest means the same sheet
 * @param reasons what keeps it from being final, gravest first; what only warns comes last
 * @param approved the day of the last signature under its text, if all are there
 * @param qualified false where someone without the qualification translated or read a part of it
 */
public record Standing(
    String entry,
    String language,
    String digest,
    List<Reason> reasons,
    Optional<LocalDate> approved,
    boolean qualified) {

  public Standing {
    reasons = reasons.stream().sorted(Comparator.comparing(Reason::state).reversed()).toList();
  }

  /** The gravest state. */
  public State state() {
    return reasons.stream().map(Reason::state).findFirst().orElse(State.READY);
  }

  /** How the sheet may be printed. */
  public Print print() {
    return reasons.stream().map(Reason::print).max(Comparator.naturalOrder()).orElse(Print.FINAL);
  }

  /** What made it so, in words; empty where it is ready. */
  public String because() {
    return reasons.stream()
        .filter(reason -> reason.state() == state() && state() != State.READY)
        .map(reason -> reason.finding().what())
        .findFirst()
        .orElse("");
  }
}
