package goniograph.cli;

import goniograph.build.BuildOrder;
import goniograph.build.BuildReport;
import goniograph.build.Builder;
import goniograph.build.Examined;
import goniograph.exchange.FindingsReport;
import goniograph.exchange.FindingsText;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.finding.Nearest;
import goniograph.render.Layout;
import goniograph.source.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks the library and makes its sheets. */
@Command(
    name = "build",
    description = "Checks the library and makes its sheets for paper and screen.",
    footer = "%nEnds with 1 if something was found at or above --fail-on, with 0 if not.")
final class BuildCommand implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(
      arity = "0..*",
      paramLabel = "ENTRY",
      description = "Ids of the entries to build; all unless said.")
  private List<String> entries = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the sheets go; build-output/sheets in the library unless said.")
  private String out = "";

  @Option(
      names = "--languages",
      split = ",",
      paramLabel = "TAG",
      description = "Languages, with commas between; all of the clinic unless said.")
  private List<String> languages = List.of();

  @Option(
      names = "--layouts",
      split = ",",
      paramLabel = "NAME",
      description = "Layouts, with commas between; there is ${DEFAULT-VALUE} so far.",
      defaultValue = "standard")
  private List<String> layouts = List.of("standard");

  @Option(
      names = "--papers",
      split = ",",
      paramLabel = "NAME",
      description = "Papers, with commas between; there is ${DEFAULT-VALUE} so far.",
      defaultValue = "a4")
  private List<String> papers = List.of("a4");

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many sheets are made at a time; ${DEFAULT-VALUE} unless said.")
  private int jobs = 2;

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      description = "${COMPLETION-CANDIDATES}; ${DEFAULT-VALUE} unless said.")
  private FailOn failOn = FailOn.error;

  BuildCommand(World world) {
    this.common = new Common(world);
  }

  @Override
  public Integer call() {
    Files files = common.files();
    LocalDate today = common.today();
    stage("today    " + today);
    Examined examined = Examined.of(files, today);
    stage("read     " + examined.checked().ids().size() + " entries");
    BuildOrder order = order(examined);
    stage("checked  " + counts(examined.findings()));
    String folder = out.isEmpty() ? common.library() + "/build-output/sheets" : out;
    BuildReport report =
        new Builder(examined, today, order, this::stage).build(common.folder(folder));
    say(report, today, examined.checked().ids().size());
    String where = order.isWhole() ? ", open " + folder + "/index.html" : ", in " + folder;
    stage("sheets   " + report.sheets().size() + where);
    return report.findings().stream().anyMatch(failOn::reached) ? Exit.FINDINGS : Exit.CLEAN;
  }

  private void say(BuildReport report, LocalDate today, int looked) {
    List<Finding> shown =
        report.findings().stream().filter(finding -> finding.level() != Level.NOTE).toList();
    if (!shown.isEmpty()) {
      common
          .out()
          .print(FindingsText.of(new FindingsReport(today, common.library(), looked, shown)));
    }
    report.leftOut().forEach(line -> stage("left out " + line));
  }

  private BuildOrder order(Examined examined) {
    entries.forEach(id -> known("entry", id, examined.checked().ids()));
    languages.forEach(tag -> known("language", tag, examined.library().languages()));
    papers.forEach(paper -> known("paper", paper, List.of("a4")));
    if (jobs < 1) {
      throw new Refusal("--jobs is how many sheets are made at a time. Give 1 or more.");
    }
    return new BuildOrder(
        entries, languages, layouts.stream().map(BuildCommand::layout).toList(), papers, jobs);
  }

  private static Layout layout(String name) {
    known("layout", name, Layout.ALL.stream().map(Layout::name).toList());
    return Layout.named(name).orElseThrow();
  }

  private static void known(String what, String typed, List<String> known) {
    if (!known.contains(typed)) {
      throw new Refusal(
          "There is no "
              + what
              + " `"
              + typed
              + "`"
              + Nearest.hint(typed, known)
              + ". There is "
              + String.join(", ", known)
              + ".");
    }
  }

  private static String counts(List<Finding> findings) {
    return count(findings, Level.ERROR, "error")
        + ", "
        + count(findings, Level.WARNING, "warning")
        + ", "
        + count(findings, Level.NOTE, "note");
  }

  private static String count(List<Finding> findings, Level level, String word) {
    long n = findings.stream().filter(finding -> finding.level() == level).count();
    return n + " " + word + (n == 1 ? "" : "s");
  }

  private void stage(String line) {
    common.out().println(line);
    common.out().flush();
  }
}
