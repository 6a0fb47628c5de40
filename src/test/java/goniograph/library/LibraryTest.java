package goniograph.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.dose.Counts;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.dose.Sides;
import goniograph.dose.Unit;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Vocabulary.Region;
import goniograph.library.Vocabulary.Stance;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.library.Vocabulary.Urgency;
import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LibraryTest {

  @Test
  void readsAnExerciseWithItsPlaces() {
    LibraryRead read = Library.read(SampleLibrary.files());
    assertEquals(List.of(), read.findings());
    Exercise exercise = read.library().exercise("sh-turnout-hold").orElseThrow();
    assertEquals(Region.SHOULDER, exercise.region().get(0).value());
    assertEquals(Sides.Mode.AFFECTED, exercise.sides().value().mode());
    assertEquals(8, exercise.position().at().line());
    assertEquals(11, exercise.position().at().column());
    assertEquals(LocalDate.of(2027, 5, 31), exercise.reviewDue().orElseThrow().value());
    assertEquals(
        List.of("shoulder external rotation 0..10 deg", "elbow flexion 85..95 deg"),
        exercise.range().stream()
            .map(r -> r.joint().value() + " " + r.movement() + " " + r.degrees().value())
            .toList());
    assertEquals("To reach and lift with less ache.", exercise.text().pieces("why").get(0).text());
  }

  @Test
  void aRungIsTheEntryWithItsStepLaidOver() {
    Exercise exercise =
        Library.read(SampleLibrary.files()).library().exercise("sh-turnout-hold").orElseThrow();
    assertEquals(List.of(1, 2, 3), exercise.rungs().stream().map(Rung::n).toList());
    Rung start = exercise.start();
    assertEquals(2, start.n());
    assertEquals(Optional.of(Quantity.of(10, Unit.SECOND)), start.dose().dose().hold());
    assertEquals(Optional.of(Quantity.of(5, Unit.SECOND)), start.dose().dose().relax());
    assertEquals(25, start.dose().at(DoseField.HOLD).orElseThrow().line());
    assertEquals(17, start.dose().at(DoseField.RELAX).orElseThrow().line());
    assertEquals(Stance.NARROW, start.conditions().stance().orElseThrow().value());
    Conditions top = exercise.rung(3).orElseThrow().conditions();
    assertEquals(Stance.HIP, top.stance().orElseThrow().value());
    assertEquals(SupportNeed.HOVER, top.support().need().orElseThrow().value());
  }

  @Test
  void limitsOfAPrecautionAreRangesOfTheirField() {
    Exercise exercise =
        Library.read(SampleLibrary.files()).library().exercise("sh-turnout-hold").orElseThrow();
    Precaution first = exercise.precautions().get(0);
    assertTrue(first.override().isEmpty(), "as the table has it");
    assertEquals("hold", first.limits().get(0).field().value());
    assertTrue(
        first.limits().get(0).within().value() instanceof Precaution.Within.Amounts amounts
            && amounts.range().contains(Quantity.of(5, Unit.SECOND))
            && !amounts.range().contains(Quantity.of(6, Unit.SECOND)));
    assertTrue(
        first.limits().get(1).within().value() instanceof Precaution.Within.Counts counts
            && counts.range().equals(Counts.SCORE.readRange("..3").value().orElseThrow()));
  }

  /** One change to a right entry, and the finding beside it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          aim: control      | aim: controll        | 6:6 field-word
          aim: control      | aims: control        | 6:1 field-unknown
          aim: control      | aim: yes             | 6:6 yaml-yes-no
          aim: control      | aim:                 | 6:5 field-empty
          region: [shoulder]| region: shoulder     | 5:9 field-kind
          region: [shoulder]| region: [sholder]    | 5:10 field-word
          position: standing| position: kneeling   | 8:11 lies-on-missing
          , count: per-side | ~~                   | 12:8 field-missing
          relax: 5 s        | relax: 5             | 17:10 quantity-unit-missing
          relax: 5 s        | relax: 5 sec         | 17:10 quantity-unit-wrong
          relax: 5 s        | relax: 1:30          | 17:10 quantity-spelling
          relax: 5 s        | relax: 010           | 17:10 quantity-spelling
          relax: 5 s        | relax: 2,5 s         | 17:10 quantity-spelling
          relax: 5 s        | relax: 10"           | 17:10 quantity-spelling
          sets: 1           | sets: 1 s            | 16:9 quantity-unit-wrong
          relax: 5 s        | realx: 5 s           | 17:3 field-unknown
          gap: 6 h          | gapp: 6 h            | 18:46 field-unknown
          frequency: { per_day: 2, days_per_week: 7, gap: 6 h } | frequency: 2 | 18:14 field-kind
          sets: 1           | hold: 5 s            | 24:21 ladder-field-twice; 25:21 ladder-field-twice; 26:21 ladder-field-twice
          start: 2          | start: 4             | 22:10 ladder-order
          { n: 3,           | { n: 4,              | 26:7 ladder-order
          support.need: hover | suport.need: hover | 26:50 field-unknown
          reps: 5, effort: 3..4 | rep: 5, effort: 3..4 | 26:27 field-unknown
          pain_at_most: 3,  | pain_atmost: 3,      | 27:44 field-unknown
          pain_at_most: 3,  | near_fall: 3,        | 27:44 field-unknown
          next_morning: settled } | next_morning: fine } | 27:75 field-word; 28:52 field-word
          elbow: [flexion 85..95 deg] | elbow: [85..95] | 14:57 field-word
          elbow: [flexion 85..95 deg] | elbow: [flexion 85..95] | 14:57 quantity-unit-missing
          id: sh-turnout-hold | id: sh-turn-hold   | 3:5 entry-folder
          ref: note-14, | ref: note-14, page: 3,   | 37:61 field-unknown
          limits: { hold: ..5 s | limits: { hold: ..5 | 33:74 quantity-unit-missing
          limits: { hold: | limits: { holt:         | 33:68 field-unknown
          2027-05-31        | 31/05/2027           | 38:13 field-date
          ## landmark       | ## landmarks         | 41:3 section-missing; 51:4 section-unknown
          ## feel           | ### feel             | 41:3 section-missing; 47:1 text-structure
          schema: entry/1   | schema: entry/2      | 2:9 field-word
          """)
  void aMistakeIsFoundAtItsPlace(String right, String wrong, String expected) {
    assertTrue(SampleLibrary.ENTRY.contains(right), right);
    Files files =
        SampleLibrary.files()
            .with(SampleLibrary.ENTRY_PATH, SampleLibrary.ENTRY.replace(right, wrong));
    assertEquals(expected, found(Library.read(files).findings()));
  }

  @Test
  void aBrokenEntryStandsAsideAndTheOthersAreRead() {
    Files files =
        SampleLibrary.files()
            .with("content/exercises/kn-broken/en.md", "---\nid: [x\n---\n# T\n")
            .with("content/exercises/kn-empty/notes.txt", "");
    LibraryRead read = Library.read(files);
    assertEquals(List.of("kn-broken", "kn-empty"), read.library().broken());
    assertEquals(1, read.library().exercises().size());
    assertEquals("2:5 yaml-unterminated; 1:1 entry-source-missing", found(read.findings(), true));
    assertTrue(read.findings().stream().allMatch(f -> f.entry().startsWith("kn-")));
  }

  @Test
  void anUntouchedBlankHasOneFindingForEachEmptyField() {
    Files files =
        SampleLibrary.files()
            .with(
                SampleLibrary.ENTRY_PATH,
                SampleLibrary.ENTRY.replaceAll("(?m)^(aim|type|position|figure):.*$", "$1:"));
    assertEquals(
        "6:5 field-empty; 7:6 field-empty; 8:10 field-empty; 13:8 field-empty",
        found(Library.read(files).findings()));
  }

  @Test
  void aLanguageVersionIsTextAlone() {
    Files right = SampleLibrary.files().with(version("ar"), "# العنوان\n## why\nلترفع.\n");
    Library library = Library.read(right).library();
    Entry entry = library.entry("sh-turnout-hold").orElseThrow();
    assertEquals(List.of("ar", "en"), entry.languages());
    assertEquals("لترفع.", entry.version("ar").orElseThrow().body().pieces("why").get(0).text());
    Files wrong = SampleLibrary.files().with(version("ar"), "---\nreps: 8\n---\n# T\n## how\nx\n");
    List<Finding> findings = Library.read(wrong).findings();
    assertEquals("1:1 version-front-matter; 5:4 section-unknown", found(findings));
    assertTrue(findings.stream().allMatch(f -> f.language().equals("ar")));
  }

  @Test
  void statementsHaveTheirLevelInTheSourceLanguageAlone() {
    MemoryFiles files =
        SampleLibrary.files()
            .with(
                "shared/statements/ar.yaml",
                """
                s-chest: { text: "ألم: {clinic.emergency}." }
                s-breathe: { level: caution, text: "تنفس." }
                s-breath: { text: "تنفس." }
                """);
    LibraryRead read = Library.read(files);
    assertEquals("2:14 field-unknown; 3:1 statement-unknown", found(read.findings()));
    Statement chest = read.library().statement("s-chest").orElseThrow();
    assertEquals(Urgency.EMERGENCY, chest.urgency().value());
    assertEquals("clinic.emergency", chest.slots("ar").get(0).name());
    assertEquals(24, chest.slots("ar").get(0).at().column());
    assertEquals(
        List.of("s-breathe", "s-chest"),
        read.library().statements().stream().map(s -> s.id().value()).toList());
  }

  /** One change to a right clinic file, and the finding beside it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          desk: "+00 0000 0100" | desk: "ring us"      | 4:17 clinic-phone
          emergency: "0000"     | emergency: "0"       | 7:12 clinic-phone
          "08:00..17:00"        | "8..17"              | 5:19 clinic-hours
          "08:00..17:00"        | "17:00..08:00"       | 5:19 clinic-hours
          mon-fri:              | weekdays:            | 5:20 clinic-hours
          Etc/UTC               | Quillhaven           | 3:12 clinic-time-zone
          paper: A4             | paper: a4            | 2:8 field-word
          [en, ar]              | [en, Arabic]         | 8:17 clinic-language
          languages: [en, ar]   | settings: {minutes: 5} | 1:1 field-missing; 8:12 field-unknown
          """)
  void aMistakeInTheClinicFileIsFound(String right, String wrong, String expected) {
    assertTrue(SampleLibrary.CLINIC.contains(right), right);
    Files files =
        SampleLibrary.files()
            .with("shared/clinic.yaml", SampleLibrary.CLINIC.replace(right, wrong));
    assertEquals(expected, found(Library.read(files).findings()));
  }

  @Test
  void readsRulesStockSourcesPhrasesAndTerms() {
    MemoryFiles files =
        SampleLibrary.files()
            .with(
                "shared/rules/a.yaml",
                """
                schema: rules/1
                limits:
                  - { type: any, field: per_day, limit: 1..6, source: common-practice }
                  - { type: balance, field: hold, limit: 1..60 s, warn: ..45 s, source: who }
                requires:
                  - { rule: r, when: w, numbers: { reach: 15 cm, effort: 5 }, tags: [a], source: who }
                """)
            .with(
                "shared/bands.yaml",
                """
                bands: [ { id: band-a, latex_free: band-b, force_at: [ { length: 1.3 m, force: 9 N } ] } ]
                weights: [ 0.5 kg ]
                """)
            .with("shared/sources.yaml", "- { id: who, title: Guidelines, DOI: 10.1/x }\n")
            .with(
                "shared/phrases/en.yaml",
                "unit:\n  s: \"{n, plural, other {# s}}\"\nside-forms: [with]\n")
            .with("shared/terms/en.yaml", "forbidden:\n  - { word: supine, say: on your back }\n");
    LibraryRead read = Library.read(files);
    assertEquals("", found(read.findings()));
    Library library = read.library();
    assertEquals("frequency.per_day", library.limits().get(0).field().value());
    assertEquals(List.of(), library.limits().get(0).scope().types());
    assertTrue(library.limits().get(1).warn().isPresent());
    assertEquals(
        "15",
        Optional.ofNullable(library.requirements().get(0).trigger().numbers().get("reach"))
            .orElseThrow()
            .inBase()
            .toPlainString());
    assertEquals("band-a", library.stock().band("band-b").orElseThrow().id().value());
    assertEquals("Guidelines", library.source("who").orElseThrow().text("title"));
    PhraseSource phrases = library.phrases("en").orElseThrow();
    assertEquals("{n, plural, other {# s}}", phrases.message("unit.s").orElseThrow().value());
    assertEquals("with", phrases.list("side-forms").get(0).value());
    assertEquals("supine", library.terms("en").orElseThrow().forbidden().get(0).word().value());
  }

  /** What a row of the table of limits says, and the finding about it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "type: any, field: hold, limit: ..60 s                             | ",
        "type: [dynamic, functional], field: tempo, limit: 2..12 s         | ",
        "type: any, audience: { child: 6..11 }, field: reps, limit: 1..10  | ",
        "type: any, region: [knee, ankle], field: load.mass, limit: ..5 kg | ",
        "type: any, from_effort: 6, field: warm_up, limit: true            | ",
        "type: any, field: region_entries, limit: ..4                      | ",
        "type: any, field: hold, limit: ..60                               | quantity-unit-missing",
        "type: any, field: reps, limit: ..60 s                             | quantity-unit-wrong",
        "type: any, field: warm_up, limit: 5                               | field-word",
        "type: any, region: kne, field: hold, limit: ..60 s                | field-word",
        "type: dinamic, field: hold, limit: ..60 s                         | field-word",
        "type: any, audience: { chld: 9 }, field: hold, limit: ..60 s      | field-unknown"
      })
  void readsTheTableOfLimits(String row, String rules) {
    String table = "schema: rules/1\nlimits:\n  - { " + row + ", source: common-practice }\n";
    LibraryRead read =
        Library.read(SampleLibrary.files().with("shared/rules/dose-limits.yaml", table));
    List<String> found =
        read.findings().stream()
            .map(Finding::rule)
            .filter(rule -> !rule.startsWith("library"))
            .toList();
    assertEquals(rules == null ? "" : rules, String.join(" ", found));
    assertEquals(rules == null ? 1 : 0, read.library().limits().size());
  }

  @Test
  void readsAProgramme() {
    MemoryFiles files =
        SampleLibrary.files()
            .with(
                "content/programmes/pr-steady/en.md",
                """
                ---
                schema: programme/1
                id: pr-steady
                kind: programme
                for: [falls-last-year]
                phases:
                  - { weeks: 1..2, add: [sh-turnout-hold] }
                  - { weeks: 3, replace: { sh-turnout-hold: sh-row-band }, steps: { sh-row-band: 2 } }
                review_due: 2027-05-31
                ---
                # Steady
                """);
    LibraryRead read = Library.read(files);
    assertEquals("", found(read.findings()));
    Programme programme = read.library().programmes().get(0);
    assertEquals(new Programme.Weeks(1, 2), programme.phases().get(0).weeks().value());
    assertEquals("sh-row-band", programme.phases().get(1).replace().get(0).to().value());
    assertEquals(2, programme.phases().get(1).steps().get(0).step().value());
  }

  @Test
  void anEmptyFolderIsAnEmptyLibrary() {
    LibraryRead read = Library.read(new MemoryFiles());
    assertEquals("1:1 library-file-missing; 1:1 library-file-missing", found(read.findings()));
    assertEquals(List.of("en"), read.library().languages());
  }

  private static String version(String language) {
    return "content/exercises/sh-turnout-hold/" + language + ".md";
  }

  private static String found(List<Finding> findings) {
    return found(findings, false);
  }

  private static String found(List<Finding> findings, boolean errorsOnly) {
    return String.join(
        "; ",
        findings.stream()
            .filter(f -> !errorsOnly || f.level() == Level.ERROR)
            .map(f -> f.at().line() + ":" + f.at().column() + " " + f.rule())
            .toList());
  }
}
