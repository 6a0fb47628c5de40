package goniograph.cli;

import goniograph.check.Approvals;
import goniograph.library.Library;
import goniograph.register.Releases.Released;
import goniograph.register.SheetCode;
import goniograph.register.Standing;
import goniograph.register.State;
import goniograph.source.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows how every sheet stands, or what a code on paper stands for. */
@Command(
    name = "show",
    description = "Shows how every sheet stands, or what a code on paper stands for.")
final class ShowCommand implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(
      paramLabel = "CODE",
      arity = "0..*",
      description = "A code as it stands on the paper, for instance K7F3 2M9D 4Q.")
  private List<String> code = List.of();

  ShowCommand(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    Files files = common.files();
    Approvals approvals = Approvals.of(files, Library.read(files).library(), common.today());
    approvals.damage().forEach(one -> common.err().println(one.at().file() + ": " + one.what()));
    if (code.isEmpty()) {
      approvals.standings().forEach(standing -> line(standing, approvals));
    } else {
      show(code(String.join(" ", code)), approvals);
    }
    return Exit.CLEAN;
  }

  private static SheetCode code(String typed) {
    SheetCode.Typed read = SheetCode.parse(typed);
    return read.code().orElseThrow(() -> new Refusal("`" + typed + "`: " + read.wrong()));
  }

  private void line(Standing standing, Approvals approvals) {
    String released =
        approvals
            .releases()
            .find(standing)
            .map(one -> "  " + one.sheet().code().grouped() + "  " + one.release().name())
            .orElse("");
    String because = standing.because().isEmpty() ? "" : "  " + standing.because();
    common
        .out()
        .println(
            standing.entry()
                + " "
                + standing.language()
                + ": "
                + standing.state().word()
                + released
                + because);
  }

  private void show(SheetCode wanted, Approvals approvals) {
    Released found =
        approvals
            .releases()
            .find(wanted)
            .orElseThrow(
                () ->
                    new Refusal(
                        "No release of this library holds "
                            + wanted.grouped()
                            + ". Look whether the paper is from this clinic."));
    field("code", wanted.grouped());
    field("entry", found.sheet().entry());
    field("language", found.sheet().language());
    field("release", found.release().name() + " of " + found.release().on());
    field("now", now(found, approvals));
  }

  private void field(String name, String value) {
    common.out().println(String.format(Locale.ROOT, "%-9s %s", name, value));
  }

  private static String now(Released found, Approvals approvals) {
    Optional<Standing> standing =
        approvals.standing(found.sheet().entry(), found.sheet().language());
    if (standing.isEmpty()) {
      return "no longer in the library: do not use this page";
    }
    Standing now = standing.get();
    if (now.state() != State.READY) {
      return now.state().word() + ": " + now.because();
    }
    return now.digest().equals(found.sheet().digest())
        ? "ready: this page is still good"
        : "changed since: print the new page";
  }
}
