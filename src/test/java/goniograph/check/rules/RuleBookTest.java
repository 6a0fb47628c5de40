package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Checked;
import goniograph.check.Checker;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule documents itself, and its examples are true. */
class RuleBookTest {
  /** A page and one of its examples, named for the report. */
  record Case(RulePage page, Example example) {
    @Override
    public String toString() {
      return page.name() + ": " + RuleBookTest.oneLine(example.marked());
    }
  }

  static Stream<RulePage> pages() {
    return RuleBook.pages().stream();
  }

  /** What only printing finds is tried by {@code PrintPagesTest}. */
  static Stream<Case> cases() {
    return pages()
        .filter(page -> !RuleBook.printing().contains(page))
        .flatMap(page -> page.examples().stream().map(one -> new Case(page, one)));
  }

  /** Where the good passage is not simply what the example library says. */
  static Stream<Case> changedCases() {
    return cases().filter(one -> !one.example().goodEdits().isEmpty());
  }

  private static String oneLine(String text) {
    return text.replace("\n", "⏎").replace("\u0007", "␇");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void saysEverything(RulePage page) {
    assertAll(
        () -> assertTrue(page.name().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*"), page.name()),
        () -> assertFalse(page.what().isBlank()),
        () -> assertFalse(page.why().isBlank()),
        () -> assertFalse(page.source().isBlank()),
        () -> assertFalse(page.examples().isEmpty()));
  }

  @Test
  void namesAreDifferent() {
    Set<String> names = new HashSet<>();
    pages().forEach(page -> assertTrue(names.add(page.name()), page.name()));
  }

  @Test
  void theExampleLibraryIsClean() {
    assertEquals(List.of(), grave(ExampleLibrary.with(List.of())));
  }

  @ParameterizedTest
  @MethodSource("changedCases")
  void aGoodPassageIsSilent(Case one) {
    assertEquals(List.of(), grave(ExampleLibrary.with(one.example().goodEdits())));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aBadPassageHasItsOneFinding(Case one) {
    Files files = ExampleLibrary.with(one.example().badEdits());
    String expected = one.page().name() + " " + place(one.example(), files);
    List<String> found = found(files, one.page().name());
    assertTrue(
        found.stream().anyMatch(line -> line.startsWith(expected)),
        () -> expected + " but was " + found);
    assertTrue(
        found.stream().allMatch(line -> belongs(line, one.page().name())),
        () -> "other rules found something too: " + found);
  }

  /**
   * What an example cannot help raising too: its signatures are void, its manifest is edited, the
   * pose it builds on is wrong.
   */
  private static final Map<String, String> COMPANIONS =
      Map.of("signature-conflict", "signature-void", "pose-extends-faulty", "pose-length");

  private static boolean belongs(String line, String rule) {
    return line.startsWith(rule + " ")
        || line.startsWith(COMPANIONS.getOrDefault(rule, rule) + " ");
  }

  /**
   * Where the passage has its marks, as {@code file:line:column-line:column}; up to the dash where
   * only the beginning is marked.
   */
  private static String place(Example example, Files files) {
    SourceFile file = SourceFile.of(example.file(), ExampleLibrary.text(files, example.file()));
    int at = file.text().indexOf(example.bad());
    int end = Math.max(example.start(), example.end());
    String place = place(file.span(at + example.start(), at + end));
    return example.end() < 0 ? place.substring(0, place.lastIndexOf('-') + 1) : place;
  }

  private static String place(Span at) {
    return at.file()
        + ":"
        + at.line()
        + ":"
        + at.column()
        + "-"
        + at.endLine()
        + ":"
        + at.endColumn();
  }

  /** All errors and warnings of a library, one line each. */
  private static List<String> grave(Files files) {
    return found(files, "");
  }

  /** All errors and warnings, and the notes of one rule, one line each. */
  private static List<String> found(Files files, String rule) {
    Checked checked = ExampleLibrary.checked(files);
    return new Checker(RuleBook.rules())
        .check(checked).stream()
            .filter(finding -> finding.level() != Level.NOTE || finding.rule().equals(rule))
            .map(RuleBookTest::line)
            .toList();
  }

  private static String line(Finding finding) {
    return finding.rule() + " " + place(finding.at());
  }
}
