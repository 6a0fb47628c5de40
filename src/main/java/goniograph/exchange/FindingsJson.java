package goniograph.exchange;

import goniograph.finding.Finding;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Findings as JSON for programs: {@code {tool, today, library, findings: [...]}}. Files are
 * relative to the library with {@code /}; lines and columns count from 1, columns in code points.
 */
public final class FindingsJson {
  private FindingsJson() {}

  /** The whole report, ending with a line feed. */
  public static String of(FindingsReport report) {
    ObjectNode root = JsonMapper.shared().createObjectNode();
    root.put("tool", FindingsReport.TOOL);
    root.put("today", report.today().toString());
    root.put("library", report.library());
    ArrayNode findings = root.putArray("findings");
    report.findings().forEach(finding -> add(findings.addObject(), finding));
    return Json.text(root);
  }

  private static void add(ObjectNode node, Finding finding) {
    node.put("rule", finding.rule());
    node.put("level", finding.level().word());
    node.put("entry", finding.entry());
    node.put("language", finding.language());
    node.put("file", finding.at().file());
    node.put("line", finding.at().line());
    node.put("column", finding.at().column());
    node.put("endLine", finding.at().endLine());
    node.put("endColumn", finding.at().endColumn());
    node.put("what", finding.what());
    node.put("why", finding.why());
    node.put("because", finding.because());
    node.put("mend", finding.mend());
    node.put("mendGrade", finding.mendGrade().word());
    node.put("accepted", finding.accepted());
    node.put("source", finding.source());
  }
}
