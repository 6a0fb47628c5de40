package goniograph.sheet;

import goniograph.dose.Quantity;
import goniograph.dose.Unit;
import goniograph.language.PhraseProblem;
import goniograph.language.Phrased;
import goniograph.language.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The phrases of one language as a sheet in the making asks for them. What cannot be said is noted,
 * so that one sheet names all its gaps at once; a sheet with a gap is not printed.
 */
final class Wording {
  private static final Quantity MINUTE = Quantity.of(60, Unit.SECOND);

  private final Phrases phrases;
  private final List<PhraseProblem> gaps = new ArrayList<>();

  Wording(Phrases phrases) {
    this.phrases = phrases;
  }

  /** What could not be said, in the order it was asked for. */
  List<PhraseProblem> gaps() {
    return List.copyOf(gaps);
  }

  boolean has(String id) {
    return phrases.ids().contains(id);
  }

  String say(String id) {
    return say(id, Map.of());
  }

  String say(String id, Map<String, ?> arguments) {
    Phrased phrased = phrases.format(id, arguments);
    phrased.problem().ifPresent(gaps::add);
    return phrased.text();
  }

  /** The phrase of the first id that there is. */
  String sayFirst(List<String> ids, Map<String, ?> arguments) {
    return say(
        ids.stream().filter(this::has).findFirst().orElse(ids.get(ids.size() - 1)), arguments);
  }

  /** A quantity in words; whole minutes as minutes. */
  String amount(Quantity quantity) {
    Quantity shown = wholeMinutes(quantity);
    Phrased phrased = phrases.amount(shown.value(), shown.unit().code());
    phrased.problem().ifPresent(gaps::add);
    return phrased.text();
  }

  /** A bare number with the language's digits. */
  String number(Number value) {
    return phrases.language().number(value);
  }

  private static Quantity wholeMinutes(Quantity quantity) {
    boolean whole =
        quantity.unit() == Unit.SECOND
            && quantity.value().remainder(MINUTE.value()).signum() == 0
            && quantity.value().signum() > 0;
    return whole ? quantity.in(Unit.MINUTE).orElse(quantity) : quantity;
  }
}
