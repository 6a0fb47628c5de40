package goniograph.cli;

import goniograph.build.Examined;
import goniograph.check.Checked;
import goniograph.check.Checker;
import goniograph.check.rules.RuleBook;
import goniograph.exchange.FindingsHtml;
import goniograph.exchange.FindingsJson;
import goniograph.exchange.FindingsReport;
import goniograph.exchange.FindingsSarif;
import goniograph.exchange.FindingsText;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Entry;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check}: all findings about the library, or about some entries. */
@Command(
    name = "check",
    description = "Checks the library and says what to mend.",
    footer = "%nEnds with 1 if something was found at or above --fail-on, with 0 if not.")
final class CheckCommand implements Callable<Integer> {
  /** How findings are written. */
  enum Format {
    text,
    json,
    sarif,
    html
  }

  @Mixin private final Common common;

  @Parameters(
      arity = "0..*",
      paramLabel = "ENTRY",
      description = "Ids of the entries to check; all unless said.")
  private List<String> entries = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} unless said.")
  private Format format = Format.text;

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} unless said.")
  private FailOn failOn = FailOn.error;

  @Option(
      names = "--mend",
      description =
          "Shows what would change, mends what is safe, and asks for the rest; what nobody can tell"
              + " is only shown.")
  private boolean mend;

  CheckCommand(World world) {
    this.common = new Common(world);
  }

  @Override
  public Integer call() {
    Examined examined = Examined.of(common.files(), common.today());
    Checked checked = examined.checked();
    entries.forEach(id -> known(id, checked.ids()));
    List<Finding> findings = wanted(examined);
    if (mend && common.mending().mend(findings)) {
      examined = Examined.of(common.files(), common.today());
      findings = wanted(examined);
    }
    common
        .out()
        .print(
            written(
                new FindingsReport(common.today(), common.library(), looked(checked), findings),
                examined.library().entries()));
    return findings.stream().anyMatch(failOn::reached) ? Exit.FINDINGS : Exit.CLEAN;
  }

  private List<Finding> wanted(Examined examined) {
    return entries.isEmpty() ? examined.findings() : Checker.about(entries, examined.findings());
  }

  private int looked(Checked checked) {
    return entries.isEmpty() ? checked.ids().size() : (int) entries.stream().distinct().count();
  }

  private String written(FindingsReport report, List<Entry> all) {
    return switch (format) {
      case text -> FindingsText.of(report);
      case json -> FindingsJson.of(report);
      case html -> FindingsHtml.of(report, all);
      case sarif -> FindingsSarif.of(report, RuleBook.rules());
    };
  }

  private static void known(String id, List<String> ids) {
    if (!ids.contains(id)) {
      String hint = Nearest.hint(id, ids);
      throw new Refusal("There is no entry `" + id + "`" + (hint.isEmpty() ? "." : hint));
    }
  }
}
