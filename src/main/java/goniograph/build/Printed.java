package goniograph.build;

import goniograph.finding.Finding;
import goniograph.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * What became of a job.
 *
 * @param job the job
 * @param leftOut why there is no sheet, "" where there is one
 * @param sheet the page model
 * @param html the screen page; empty where there is no sheet
 * @param pdf the paper's bytes; empty where there is no sheet; not copied
 * @param findings what was found while it was made
 */
record Printed(
    Job job,
    String leftOut,
    Optional<Sheet> sheet,
    String html,
    byte[] pdf,
    List<Finding> findings) {
  Printed {
    findings = List.copyOf(findings);
  }

  static Printed nothing(Job job, String reason, List<Finding> findings) {
    return new Printed(job, reason, Optional.empty(), "", new byte[0], findings);
  }
}
