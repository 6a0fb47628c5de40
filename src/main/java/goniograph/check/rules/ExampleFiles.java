package goniograph.check.rules;

import goniograph.check.Example;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** Files of the example library, by what they hold. */
final class ExampleFiles {
  static final String HEEL_TO_TOE = "content/exercises/ba-heel-toe-stand/en.md";
  static final String CHAIR_RISE = "content/exercises/hp-chair-rise/en.md";
  static final String CHAIR_RISE_ARABIC = "content/exercises/hp-chair-rise/ar.md";
  static final String BAND = "content/exercises/sh-row-band/en.md";
  static final String ADVICE = "content/advice/ad-how-much-pain/en.md";
  static final String ADVICE_ARABIC = "content/advice/ad-how-much-pain/ar.md";
  static final String STATEMENTS = "shared/statements/en.yaml";
  static final String STATEMENTS_ARABIC = "shared/statements/ar.yaml";
  static final String PHRASES = "shared/phrases/en.yaml";
  static final String PHRASES_ARABIC = "shared/phrases/ar.yaml";
  static final String LIMITS = "shared/rules/dose-limits.yaml";
  static final String REQUIRED = "shared/rules/required-statements.yaml";

  private static final Map<String, String> LISTED =
      Map.of(
          HEEL_TO_TOE,
          "s-support, s-helper, s-dizzy-stop, s-fall, s-fall-hurt, s-worse, s-pain-ease, s-morning,"
              + " s-chest",
          CHAIR_RISE,
          "s-chair-wall, s-rise-wait, s-dizzy-stop, s-chest, s-worse, s-pain-ease, s-morning",
          BAND,
          "s-band-check, s-breathe, s-spread, s-worse, s-pain-ease, s-morning, s-chest");

  private ExampleFiles() {}

  /** An entry that does not list a statement it must carry. */
  static Example without(String statement, String file) {
    String all = Objects.requireNonNull(LISTED.get(file));
    String fewer =
        Arrays.stream(all.split(", "))
            .filter(id -> !id.equals(statement))
            .collect(Collectors.joining(", "));
    return Example.in(file, "statements: [" + all + "]", "statements: «[" + fewer + "]»");
  }
}
