package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Library;
import goniograph.matter.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A source that is cited and not listed. */
public final class SourceUnknown implements Rule {
  private static final String PRACTICE = "common-practice";

  private static final RulePage PAGE =
      RulePage.of(
          "source-unknown",
          "Evidence of an entry or a row of a rule table cites a source that `shared/sources.yaml`"
              + " does not have; the nearest is offered.",
          "A claim whose source nobody can look up is no better than a guess.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "ref: who-2020", "ref: «who-2002»"),
          Example.in(
              ExampleFiles.LIMITS,
              "field: rest, limit: ..180 s, source: acsm-2011 }",
              "field: rest, limit: ..180 s, source: «acsm-2010» }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    Library library = checked.library();
    List<String> known = new ArrayList<>();
    library.sources().forEach(source -> known.add(source.id().value()));
    Stream<Finding> evidence =
        checked
            .entries()
            .flatMap(
                entry ->
                    entry.common().evidence().stream()
                        .flatMap(one -> one.ref().stream())
                        .flatMap(ref -> unknown(ref, known))
                        .map(finding -> finding.withEntry(entry.id())));
    List<String> rows = new ArrayList<>(known);
    rows.add(PRACTICE);
    Stream<Located<String>> cited =
        Stream.of(
                library.limits().stream().map(row -> row.source()),
                library.requirements().stream().map(row -> row.source()),
                library.tagRules().stream().map(row -> row.source()),
                library.equipmentChecks().stream().map(row -> row.source()))
            .flatMap(all -> all);
    return Stream.concat(evidence, cited.flatMap(source -> unknown(source, rows)));
  }

  private Stream<Finding> unknown(Located<String> id, List<String> known) {
    return References.unknown(
        this, Stream.of(id), "source", known, "add it to `shared/sources.yaml`");
  }
}
