package goniograph.finding;

import goniograph.source.Span;
import java.util.Comparator;
import java.util.List;

/**
 * One thing found in a library.
 *
 * @param rule readable name of the rule, for instance {@code dose-unit-missing}
 * @param level how grave
 * @param entry id of the entry it concerns, or "" for a file of the whole library
 * @param language language tag of the version it concerns, or "" for all
 * @param at where
 * @param what what is wrong, naming the words or values concerned
 * @param why why it matters to a patient or reader
 * @param because the property or second place that made the rule fire, or ""
 * @param mend how to mend it, with an allowed example
 * @param mendGrade how far the mend may be trusted
 * @param edits what the mend changes; empty where it is only shown
 * @param source citation of the rule, or "" for a rule of the house
 * @param accepted true where someone lets it stand, with a reason and a last day
 */
public record Finding(
    String rule,
    Level level,
    String entry,
    String language,
    Span at,
    String what,
    String why,
    String because,
    String mend,
    MendGrade mendGrade,
    List<Edit> edits,
    String source,
    boolean accepted) {
  public Finding {
    edits = List.copyOf(edits);
  }

  /** Report order: file, place, rule, then words: the same library gives the same order. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> f.at().file())
          .thenComparingInt(f -> f.at().start())
          .thenComparing(Finding::level)
          .thenComparing(Finding::rule)
          .thenComparing(Finding::language)
          .thenComparing(Finding::what);

  /** An error with its place, words and mend; the rest is added by the {@code with} methods. */
  public static Finding error(String rule, Span at, String what, String why, String mend) {
    return of(rule, Level.ERROR, at, what, why, mend);
  }

  /** A warning, as {@link #error}. */
  public static Finding warning(String rule, Span at, String what, String why, String mend) {
    return of(rule, Level.WARNING, at, what, why, mend);
  }

  /** A note, as {@link #error}. */
  public static Finding note(String rule, Span at, String what, String why, String mend) {
    return of(rule, Level.NOTE, at, what, why, mend);
  }

  private static Finding of(
      String rule, Level level, Span at, String what, String why, String mend) {
    return new Finding(
        rule, level, "", "", at, what, why, "", mend, MendGrade.SHOW, List.of(), "", false);
  }

  /** The same finding in other words. */
  public Finding withWhat(String words) {
    return new Finding(
        rule, level, entry, language, at, words, why, because, mend, mendGrade, edits, source,
        accepted);
  }

  /** The same finding, about this entry. */
  public Finding withEntry(String id) {
    return new Finding(
        rule, level, id, language, at, what, why, because, mend, mendGrade, edits, source,
        accepted);
  }

  /** The same finding, about this language version. */
  public Finding withLanguage(String tag) {
    return new Finding(
        rule, level, entry, tag, at, what, why, because, mend, mendGrade, edits, source, accepted);
  }

  /** The same finding, with the property that made it fire. */
  public Finding withBecause(String reason) {
    return new Finding(
        rule, level, entry, language, at, what, why, reason, mend, mendGrade, edits, source,
        accepted);
  }

  /** The same finding, with its citation. */
  public Finding withSource(String citation) {
    return new Finding(
        rule, level, entry, language, at, what, why, because, mend, mendGrade, edits, citation,
        accepted);
  }

  /** The same finding, with what its mend changes in the files. */
  public Finding withMend(MendGrade grade, List<Edit> changes) {
    return new Finding(
        rule, level, entry, language, at, what, why, because, mend, grade, changes, source,
        accepted);
  }

  /** The same finding, let stand. */
  public Finding asAccepted() {
    return new Finding(
        rule, level, entry, language, at, what, why, because, mend, mendGrade, edits, source, true);
  }
}
