package goniograph.build;

import goniograph.finding.Finding;
import java.util.List;

/**
 * What a build did.
 *
 * @param findings everything found, in report order
 * @param sheets paths of the sheets written, without ending
 * @param leftOut sheets not written, each with its reason
 */
public record BuildReport(List<Finding> findings, List<String> sheets, List<String> leftOut) {
  public BuildReport {
    findings = List.copyOf(findings);
    sheets = List.copyOf(sheets);
    leftOut = List.copyOf(leftOut);
  }
}
