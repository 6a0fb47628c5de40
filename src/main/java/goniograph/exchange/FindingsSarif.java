package goniograph.exchange;

import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Edit;
import goniograph.finding.Finding;
import goniograph.finding.MendGrade;
import goniograph.source.Span;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Findings in the Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS Standard, 2020),
 * for editors and build servers. Paths are relative to the library folder, columns count code
 * points, and a mend that may be applied is a fix.
 */
public final class FindingsSarif {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final String LIBRARY = "LIBRARY";

  private final FindingsReport report;
  private final Map<String, RulePage> pages = new LinkedHashMap<>();
  private final List<String> rules;

  private FindingsSarif(FindingsReport report, List<Rule> book) {
    this.report = report;
    book.forEach(rule -> pages.put(rule.page().name(), rule.page()));
    this.rules = List.copyOf(new TreeSet<>(report.findings().stream().map(Finding::rule).toList()));
  }

  /**
   * The whole report, ending with a line feed.
   *
   * @param book the rules whose pages describe the findings
   */
  public static String of(FindingsReport report, List<Rule> book) {
    return Json.text(new FindingsSarif(report, book).log());
  }

  private ObjectNode log() {
    ObjectNode log = JsonMapper.shared().createObjectNode();
    log.put("$schema", SCHEMA);
    log.put("version", "2.1.0");
    ObjectNode run = log.putArray("runs").addObject();
    ObjectNode driver = run.putObject("tool").putObject("driver");
    driver.put("name", FindingsReport.TOOL);
    ArrayNode described = driver.putArray("rules");
    rules.forEach(name -> describe(described.addObject(), name));
    run.putObject("originalUriBaseIds")
        .putObject(LIBRARY)
        .putObject("description")
        .put("text", "The library folder.");
    run.put("columnKind", "unicodeCodePoints");
    ArrayNode results = run.putArray("results");
    report.findings().forEach(finding -> add(results.addObject(), finding));
    ObjectNode properties = run.putObject("properties");
    properties.put("today", report.today().toString());
    properties.put("library", report.library());
    return log;
  }

  private void describe(ObjectNode node, String name) {
    node.put("id", name);
    RulePage page = pages.get(name);
    if (page != null) {
      node.putObject("shortDescription").put("text", page.what());
      node.putObject("fullDescription").put("text", page.why());
      node.putObject("properties").put("source", page.source());
    }
  }

  private void add(ObjectNode node, Finding finding) {
    node.put("ruleId", finding.rule());
    node.put("ruleIndex", rules.indexOf(finding.rule()));
    node.put("level", finding.level().word());
    node.putObject("message").put("text", message(finding));
    ObjectNode location = node.putArray("locations").addObject();
    ObjectNode physical = location.putObject("physicalLocation");
    artifact(physical, finding.at().file());
    region(physical.putObject("region"), finding.at());
    if (!finding.entry().isEmpty()) {
      ObjectNode entry = location.putArray("logicalLocations").addObject();
      entry.put("name", finding.entry());
      entry.put("kind", "module");
    }
    if (finding.accepted()) {
      node.putArray("suppressions").addObject().put("kind", "external").put("status", "accepted");
    }
    if (finding.mendGrade() != MendGrade.SHOW) {
      fix(node.putArray("fixes").addObject(), finding);
    }
  }

  private static String message(Finding finding) {
    List<String> sentences = new ArrayList<>(List.of(finding.what(), finding.why()));
    if (!finding.because().isEmpty()) {
      sentences.add("Because: " + finding.because() + ".");
    }
    sentences.add(finding.mend());
    return String.join(" ", sentences);
  }

  private static void artifact(ObjectNode node, String file) {
    ObjectNode artifact = node.putObject("artifactLocation");
    artifact.put("uri", uri(file));
    artifact.put("uriBaseId", LIBRARY);
  }

  private static String uri(String path) {
    try {
      return new URI(null, null, path, null).toASCIIString();
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException("not a path: " + path, e);
    }
  }

  private static void region(ObjectNode region, Span at) {
    region.put("startLine", at.line());
    region.put("startColumn", at.column());
    region.put("endLine", at.endLine());
    region.put("endColumn", at.endColumn());
    bytes(region, at);
  }

  private static void bytes(ObjectNode region, Span at) {
    region.put("byteOffset", at.start());
    region.put("byteLength", at.end() - at.start());
  }

  private static void fix(ObjectNode fix, Finding finding) {
    fix.putObject("description").put("text", finding.mend());
    Map<String, List<Edit>> files = new LinkedHashMap<>();
    finding
        .edits()
        .forEach(edit -> files.computeIfAbsent(edit.at().file(), f -> new ArrayList<>()).add(edit));
    ArrayNode changes = fix.putArray("artifactChanges");
    files.forEach(
        (file, edits) -> {
          ObjectNode change = changes.addObject();
          artifact(change, file);
          ArrayNode replacements = change.putArray("replacements");
          edits.forEach(edit -> replacement(replacements.addObject(), edit));
        });
  }

  private static void replacement(ObjectNode node, Edit edit) {
    bytes(node.putObject("deletedRegion"), edit.at());
    node.putObject("insertedContent").put("text", edit.text());
  }
}
