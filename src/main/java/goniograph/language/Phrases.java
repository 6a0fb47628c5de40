package goniograph.language;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.MessagePattern;
import goniograph.language.PhraseProblem.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The phrases of one language: ICU messages by id, with named arguments. Numbers in them take the
 * language's digits and decimal mark. Safe to share between threads.
 */
public final class Phrases {
  private record Compiled(MessageFormat format, Message message) {}

  private final Language language;
  private final SortedMap<String, Compiled> compiled = new TreeMap<>();
  private final List<PhraseProblem> problems = new ArrayList<>();

  private Phrases(Language language, Map<String, String> patterns) {
    this.language = language;
    PluralForms forms = PluralForms.of(language);
    new TreeMap<>(patterns).forEach((id, pattern) -> compile(id, pattern, forms));
  }

  /** Compiles patterns by id; what is wrong with them stands in {@link #problems()}. */
  public static Phrases of(Language language, Map<String, String> patterns) {
    return new Phrases(language, patterns);
  }

  private void compile(String id, String text, PluralForms forms) {
    try {
      Message message = new Message(id, new MessagePattern(text), forms);
      problems.addAll(message.problems());
      if (message.problems().stream().noneMatch(problem -> problem.kind() == Kind.ARGUMENT_KIND)) {
        compiled.put(id, new Compiled(new MessageFormat(text, language.locale()), message));
      }
    } catch (IllegalArgumentException | IndexOutOfBoundsException faulty) {
      String why = String.valueOf(faulty.getMessage());
      problems.add(new PhraseProblem(Kind.SYNTAX, id, why, 0));
    }
  }

  /** The language. */
  public Language language() {
    return language;
  }

  /** What is wrong with the patterns themselves, by id and place. */
  public List<PhraseProblem> problems() {
    return Collections.unmodifiableList(problems);
  }

  /** The ids that can be used, sorted. */
  public Set<String> ids() {
    return Collections.unmodifiableSet(compiled.keySet());
  }

  /** The arguments a phrase asks for, sorted; none if there is no such phrase. */
  public Set<String> arguments(String id) {
    return message(id).map(message -> message.arguments().keySet()).orElse(Set.of());
  }

  /** The words that the select arguments of a phrase tell apart, by argument. */
  public SortedMap<String, Set<String>> selects(String id) {
    return message(id).map(Message::selects).orElseGet(Collections::emptySortedMap);
  }

  /**
   * Fills in a phrase.
   *
   * @param arguments by name: a {@link Number} where the phrase counts, else anything; more than
   *     the phrase asks for is no problem
   */
  public Phrased format(String id, Map<String, ?> arguments) {
    Compiled phrase = compiled.get(id);
    if (phrase == null) {
      return Phrased.failed(new PhraseProblem(Kind.ID_MISSING, id, id, 0));
    }
    return problem(id, phrase.message(), arguments)
        .map(Phrased::failed)
        .orElseGet(() -> Phrased.of(fill(phrase.format(), arguments)));
  }

  /** A phrase without arguments. */
  public Phrased format(String id) {
    return format(id, Map.of());
  }

  /**
   * A quantity in words by the phrase of its unit, whose argument is {@code n}.
   *
   * @param ucum the UCUM code of its unit
   */
  public Phrased amount(Number value, String ucum) {
    return format(unitId(ucum), Map.of("n", value));
  }

  /** The id of the phrase of a unit: {@code unit.s}, {@code unit.kg}, {@code unit.percent}. */
  public static String unitId(String ucum) {
    return "unit." + (ucum.equals("%") ? "percent" : ucum.toLowerCase(Locale.ROOT));
  }

  private Optional<Message> message(String id) {
    return Optional.ofNullable(compiled.get(id)).map(Compiled::message);
  }

  private static Optional<PhraseProblem> problem(
      String id, Message message, Map<String, ?> arguments) {
    for (Map.Entry<String, Boolean> asked : message.arguments().entrySet()) {
      Object given = arguments.get(asked.getKey());
      if (given == null) {
        return Optional.of(new PhraseProblem(Kind.ARGUMENT_MISSING, id, asked.getKey(), 0));
      }
      if (asked.getValue() && !(given instanceof Number)) {
        return Optional.of(new PhraseProblem(Kind.ARGUMENT_NOT_A_NUMBER, id, asked.getKey(), 0));
      }
    }
    return Optional.empty();
  }

  /** ICU's formats are not safe to share, so each call works on a copy. */
  private static String fill(MessageFormat format, Map<String, ?> arguments) {
    return format.clone().format(new TreeMap<>(arguments));
  }
}
