package goniograph.check.rules;

import goniograph.check.Example;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Files of the example library, by what they hold. */
final class ExampleFiles {
  static final String HEEL_TO_TOE = "content/exercises/ba-heel-toe-stand/en.md";
  static final String HEEL_TO_TOE_ARABIC = "content/exercises/ba-heel-toe-stand/ar.md";
  static final String CHAIR_RISE = "content/exercises/hp-chair-rise/en.md";
  static final String CHAIR_RISE_ARABIC = "content/exercises/hp-chair-rise/ar.md";
  static final String BAND = "content/exercises/sh-row-band/en.md";
  static final String ROCK = "content/exercises/bk-pelvic-rock/en.md";
  static final String REACH = "content/exercises/bk-reach-kneel/en.md";
  static final String BAND_ARABIC = "content/exercises/sh-row-band/ar.md";
  static final String ADVICE = "content/advice/ad-how-much-pain/en.md";
  static final String PROGRAMME = "content/programmes/pr-first-weeks/en.md";
  static final String CLINIC = "shared/clinic.yaml";
  static final String ADVICE_ARABIC = "content/advice/ad-how-much-pain/ar.md";
  static final String STATEMENTS = "shared/statements/en.yaml";
  static final String STATEMENTS_ARABIC = "shared/statements/ar.yaml";
  static final String PHRASES = "shared/phrases/en.yaml";
  static final String PHRASES_ARABIC = "shared/phrases/ar.yaml";
  static final String LIMITS = "shared/rules/dose-limits.yaml";
  static final String PRECAUTIONS = "shared/rules/precautions.yaml";
  static final String REQUIRED = "shared/rules/required-statements.yaml";

  /** A sentence of the advice topic that examples take the place of, and its translation. */
  static final String TOLD = "Soreness that comes and goes is a normal part of getting stronger.";

  private static final String TOLD_IN_ARABIC = "الوجع الذي يأتي ويذهب جزء طبيعي من اكتساب القوة.";

  private static final Map<String, String> LISTED =
      Map.of(
          HEEL_TO_TOE,
          "s-support, s-helper, s-dizzy-stop, s-fall, s-fall-hurt, s-worse, s-pain-ease, s-morning,"
              + " s-chest",
          CHAIR_RISE,
          "s-chair-wall, s-rise-wait, s-dizzy-stop, s-chest, s-worse, s-pain-ease, s-morning",
          BAND,
          "s-band-check, s-breathe, s-spread, s-worse, s-pain-ease, s-morning, s-chest",
          ROCK,
          "s-rise-wait, s-saddle, s-spread, s-dizzy-stop, s-worse, s-pain-ease, s-morning, s-chest",
          REACH,
          "s-breathe, s-floor-rise, s-kneel-pad, s-saddle, s-spread, s-worse, s-pain-ease,"
              + " s-morning, s-chest",
          ADVICE,
          "s-chest, s-spread, s-worse, s-pain-ease, s-morning");

  private ExampleFiles() {}

  /** A sentence of the advice topic with the mark of its evidence, in both languages. */
  static Example claim(String good, String marked) {
    String mark = " [next-morning-test]";
    return Example.in(ADVICE, good + mark, marked + mark)
        .insteadOf(TOLD)
        .where(ADVICE_ARABIC, TOLD_IN_ARABIC, TOLD_IN_ARABIC + mark);
  }

  /** An entry that does not list a statement it must carry. */
  static Example without(String statement, String file) {
    return listing(file, List.of(), statement);
  }

  /** The same, of an entry that must list more than it does, the last of them too. */
  static Example needing(String file, String... more) {
    return listing(file, List.of(more), more[more.length - 1]);
  }

  private static Example listing(String file, List<String> more, String missing) {
    List<String> listed = List.of(Objects.requireNonNull(LISTED.get(file)).split(", "));
    List<String> all = Stream.concat(listed.stream(), more.stream()).toList();
    List<String> fewer = all.stream().filter(id -> !id.equals(missing)).toList();
    return Example.in(file, "statements: " + list(all), "statements: «" + list(fewer) + "»")
        .insteadOf(listed(file));
  }

  /** The statements of an entry as they are listed, and more behind them. */
  static String listed(String file, String... more) {
    List<String> listed = List.of(Objects.requireNonNull(LISTED.get(file)).split(", "));
    return "statements: " + list(Stream.concat(listed.stream(), Stream.of(more)).toList());
  }

  private static String list(List<String> ids) {
    return "[" + String.join(", ", ids) + "]";
  }
}
