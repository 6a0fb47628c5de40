package goniograph.cli;

import goniograph.build.Examined;
import goniograph.check.Approvals;
import goniograph.finding.Finding;
import goniograph.register.Manifest;
import goniograph.register.Releasing;
import goniograph.source.Files;
import goniograph.type.Family;
import java.time.LocalDate;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Freezes a release: every sheet that is ready gets its code; the others are listed. */
@Command(
    name = "release",
    description =
        "Freezes a release: every sheet that is ready gets a code; what is not ready is left out"
            + " and listed.")
final class ReleaseCommand implements Callable<Integer> {
  private static final String FONT_LICENCE = "OFL-1.1";

  @Mixin private final Common common;

  @Parameters(paramLabel = "NAME", description = "Its name, for instance 2026.3.")
  private String name = "";

  @Option(
      names = "--as",
      required = true,
      paramLabel = "ID",
      description = "Who freezes it: a role id such as manager-1, never a name.")
  private String by = "";

  ReleaseCommand(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    String who = Blanks.id(by);
    Files files = common.files();
    LocalDate today = common.today();
    Examined examined = Examined.of(files, today);
    Approvals approvals = examined.approvals();
    Stream.concat(approvals.damage().stream(), examined.sharedErrors().stream())
        .findFirst()
        .ifPresent(ReleaseCommand::refuse);
    Manifest manifest =
        new Releasing(files, approvals.releases())
            .freeze(name, who, today, licences(), approvals.standings(), examined.faulty());
    print(manifest);
    return Exit.CLEAN;
  }

  private static void refuse(Finding finding) {
    throw Refusal.because("Not released", finding);
  }

  private static SortedMap<String, String> licences() {
    TreeMap<String, String> licences = new TreeMap<>();
    for (Family family : Family.values()) {
      licences.put("font " + family.cssName(), FONT_LICENCE);
    }
    return licences;
  }

  private void print(Manifest manifest) {
    for (Manifest.Sheet sheet : manifest.sheets()) {
      common.out().println(sheet.code().grouped() + "  " + sheet.entry() + " " + sheet.language());
    }
    for (Manifest.LeftOut out : manifest.leftOut()) {
      common
          .out()
          .println(
              "left out      "
                  + out.entry()
                  + " "
                  + out.language()
                  + ": "
                  + out.state()
                  + ". "
                  + out.because());
    }
    common
        .out()
        .println(
            "Release "
                + manifest.name()
                + " is frozen with "
                + manifest.sheets().size()
                + (manifest.sheets().size() == 1 ? " sheet: " : " sheets: ")
                + Manifest.file(manifest.name()));
  }
}
