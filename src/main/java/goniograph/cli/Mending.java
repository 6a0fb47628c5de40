package goniograph.cli;

import goniograph.exchange.Difference;
import goniograph.finding.Edits;
import goniograph.finding.Finding;
import goniograph.finding.MendGrade;
import goniograph.source.Files;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Makes the mends of findings: shows the difference, makes the safe ones, asks for the others where
 * somebody sits at a terminal. A file is written whole or stays as it is.
 *
 * @param files the library
 * @param out takes the difference and the questions
 * @param yes waits for a yes; empty where nobody can be asked
 */
record Mending(Files files, PrintWriter out, Optional<BooleanSupplier> yes) {

  /** Mends what may be mended; true where a file changed. */
  boolean mend(List<Finding> findings) {
    List<Finding> mends = new ArrayList<>(graded(findings, MendGrade.SAFE));
    Map<String, byte[]> safe = Edits.applied(files, mends);
    safe.forEach((path, text) -> out.print(difference(path, text)));
    List<Finding> asked = graded(findings, MendGrade.ASK);
    asked.stream().filter(this::wanted).forEach(mends::add);
    Map<String, byte[]> changed = Edits.applied(files, mends);
    changed.forEach(files::write);
    out.print(summary(mends.size(), changed.size(), asked.size()));
    return !changed.isEmpty();
  }

  private static List<Finding> graded(List<Finding> findings, MendGrade grade) {
    return findings.stream().filter(finding -> finding.mendGrade() == grade).toList();
  }

  private String difference(String path, byte[] text) {
    return Difference.of(path, files.bytes(path).orElseThrow(), text);
  }

  private boolean wanted(Finding finding) {
    if (yes.isEmpty()) {
      return false;
    }
    out.print(finding.what() + "\n");
    Edits.applied(files, List.of(finding))
        .forEach((path, text) -> out.print(difference(path, text)));
    out.print("Make this change? [y/N] ");
    out.flush();
    return yes.get().getAsBoolean();
  }

  private String summary(int mends, int changed, int asked) {
    String made =
        (mends == 1 ? "1 mend" : mends + " mends")
            + " made in "
            + (changed == 1 ? "1 file" : changed + " files")
            + "."
            + (changed == 0 ? "" : " What was signed there must be signed again.");
    String left =
        yes.isPresent() || asked == 0
            ? ""
            : " " + asked + " more would be asked for, one by one, at a terminal.";
    return made + left + "\n\n";
  }
}
