package goniograph.check.rules;

import goniograph.language.Amounts;
import goniograph.language.Amounts.Amount;
import goniograph.language.Negation;
import goniograph.language.PersonFinder;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What makes a sentence a claim that needs evidence. */
final class ClaimCues {
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  /** The sections that tell what is so; the others tell what to do. */
  private static final String[] TELLING = {"why", "know", "feel"};

  /** Words that make a claim, and what kind of words they are. */
  record Cue(int from, int to, String kind) {}

  private final Amounts amounts;
  private final Negation negation;
  private final PersonFinder people;
  private final WordFinder more;
  private final WordFinder strong;
  private final WordFinder best;
  private final WordFinder absolute;

  ClaimCues(Words words) {
    amounts = Amounts.of(words);
    negation = Negation.of(words);
    people = PersonFinder.of(words);
    more = words.finder("claim.more");
    strong = words.finder("claim.strong");
    best = words.senseFinder("claim.best");
    absolute = words.senseFinder("claim.absolute");
  }

  /** The first cue of a sentence. */
  Optional<Cue> of(Said said) {
    String text = said.text();
    return Stream.of(
            number(said),
            words(text, strong, "a word of proof"),
            words(text, best, "a superlative"),
            said.in("why", "know") ? absolute(text) : Optional.<Cue>empty())
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Whether its numbers are those of a claim and not of a dose. */
  boolean inNumbers(Said said) {
    return number(said).isPresent();
  }

  /** A percent, a multiple or thousands. */
  private Optional<Cue> number(Said said) {
    String text = said.text();
    List<Amount> found = amounts.find(text);
    boolean compares = !more.find(text).isEmpty();
    return people.find(text).isEmpty()
        ? found.stream().flatMap(amount -> kind(amount, said, compares).stream()).findFirst()
        : Optional.empty();
  }

  private static Optional<Cue> kind(Amount amount, Said said, boolean compares) {
    boolean tells = said.in(TELLING);
    String kind =
        switch (amount.unit()) {
          case "factor-more" -> "a multiple";
          case "times" -> compares ? "a multiple" : "";
          case "factor" -> tells || compares ? "a multiple" : "";
          case "percent", "percent-points" -> tells || compares ? "a percentage" : "";
          default -> tells && amount.value().compareTo(THOUSAND) >= 0 ? "thousands" : "";
        };
    return kind.isEmpty()
        ? Optional.empty()
        : Optional.of(new Cue(amount.from(), amount.to(), kind));
  }

  private Optional<Cue> words(String text, WordFinder finder, String kind) {
    return finder.find(text).stream()
        .filter(found -> !negation.reaches(text, found.from()))
        .findFirst()
        .map(found -> new Cue(found.from(), found.to(), kind));
  }

  /** "Always" at the beginning tells what to do. */
  private Optional<Cue> absolute(String text) {
    return absolute.find(text).stream()
        .filter(found -> found.from() > 0)
        .findFirst()
        .map(found -> new Cue(found.from(), found.to(), "a word without exceptions"));
  }
}
