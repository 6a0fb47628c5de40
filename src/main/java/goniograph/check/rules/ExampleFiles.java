package goniograph.check.rules;

/** Files of the example library, by what they hold. */
final class ExampleFiles {
  static final String HEEL_TO_TOE = "content/exercises/ba-heel-toe-stand/en.md";
  static final String CHAIR_RISE = "content/exercises/hp-chair-rise/en.md";
  static final String CHAIR_RISE_ARABIC = "content/exercises/hp-chair-rise/ar.md";
  static final String BAND = "content/exercises/sh-row-band/en.md";
  static final String ADVICE = "content/advice/ad-how-much-pain/en.md";
  static final String STATEMENTS = "shared/statements/en.yaml";
  static final String STATEMENTS_ARABIC = "shared/statements/ar.yaml";
  static final String PHRASES = "shared/phrases/en.yaml";
  static final String PHRASES_ARABIC = "shared/phrases/ar.yaml";
  static final String LIMITS = "shared/rules/dose-limits.yaml";
  static final String REQUIRED = "shared/rules/required-statements.yaml";

  private ExampleFiles() {}
}
