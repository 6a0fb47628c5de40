package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.check.SlotTable;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Version;
import goniograph.matter.Located;
import java.util.List;
import java.util.stream.Stream;

/** A statement that is called and does not exist. */
public final class StatementUnknown implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "statement-unknown",
          "An entry, a text or a rule names a statement that the statement file does not have, or a"
              + " translation words one; the nearest is offered.",
          "The safety sentence that was meant would be missing from the sheet.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "s-dizzy-stop, s-chest,", "s-dizzy-stop, «s-chst»,"),
          Example.in(ExampleFiles.BAND, "6. {s-breathe}", "6. «{s-brethe}»"),
          Example.in(ExampleFiles.STATEMENTS_ARABIC, "s-breathe:", "«s-breath»:"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    List<String> known =
        checked.library().statements().stream().map(one -> one.id().value()).toList();
    Stream<Finding> entries =
        checked
            .entries()
            .flatMap(
                entry ->
                    Stream.concat(fields(entry, known), texts(entry, known))
                        .map(finding -> finding.withEntry(entry.id())));
    Stream<Finding> table =
        Stream.concat(
                checked.library().requirements().stream().flatMap(r -> r.statements().stream()),
                checked.library().tagRules().stream().flatMap(r -> r.statements().stream()))
            .flatMap(id -> unknown(id, known));
    return Stream.concat(entries, table);
  }

  private Stream<Finding> fields(Entry entry, List<String> known) {
    Stream<Located<String>> precautions =
        entry instanceof Exercise exercise
            ? exercise.precautions().stream().flatMap(one -> one.statement().stream())
            : Stream.empty();
    return Stream.concat(entry.statements().stream(), precautions)
        .flatMap(id -> unknown(id, known));
  }

  private Stream<Finding> texts(Entry entry, List<String> known) {
    return entry.languages().stream()
        .flatMap(language -> entry.version(language).stream())
        .flatMap(version -> text(version, known));
  }

  private Stream<Finding> text(Version version, List<String> known) {
    return version.body().pieces().stream()
        .flatMap(piece -> piece.slots().stream())
        .filter(slot -> SlotTable.isStatement(slot.name()))
        .flatMap(slot -> unknown(new Located<>(slot.name(), slot.at()), known))
        .map(finding -> finding.withLanguage(version.language()));
  }

  private Stream<Finding> unknown(Located<String> id, List<String> known) {
    return References.unknown(
        this, Stream.of(id), "statement", known, "add the statement and have it signed");
  }
}
