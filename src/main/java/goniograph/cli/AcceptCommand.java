package goniograph.cli;

import goniograph.check.Checked;
import goniograph.check.Checker;
import goniograph.check.rules.RuleBook;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.register.AcceptedFinding;
import goniograph.register.EntryRegister;
import goniograph.register.Read;
import goniograph.register.RegisterReader;
import goniograph.register.RegisterWriter;
import goniograph.register.Role;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lets the warnings of a rule about an entry stand until a day. */
@Command(
    name = "accept",
    description = {
      "Lets the warnings of one rule about one entry stand until a day.",
      "A warning speaks again when it says anything else. An error cannot be accepted."
    })
final class AcceptCommand implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(index = "0", paramLabel = "ENTRY", description = "The id of the entry.")
  private String entry = "";

  @Parameters(index = "1", paramLabel = "RULE", description = "The rule that warns.")
  private String rule = "";

  @Mixin private final Signatory signatory = new Signatory();

  @Option(
      names = "--reason",
      required = true,
      paramLabel = "TEXT",
      description = "Why it may stand; nothing about a patient.")
  private String reason = "";

  @Option(
      names = "--until",
      required = true,
      paramLabel = "DATE",
      description = "The last day on which it stands, as in 2027-05-31.")
  private @Nullable LocalDate until;

  AcceptCommand(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    LocalDate last = last();
    Checked checked = Checked.of(common.files(), common.today());
    List<Finding> warnings = warnings(checked);
    Entry read =
        checked.library().entry(entry).orElseThrow(() -> new Refusal("Mend its errors first."));
    write(read.common().folder(), warnings, last);
    common
        .out()
        .println(
            "Accepted `"
                + rule
                + "` in `"
                + entry
                + "`, by "
                + signatory.id()
                + " until "
                + last
                + ": "
                + warnings.size()
                + (warnings.size() == 1 ? " warning." : " warnings."));
    return Exit.CLEAN;
  }

  private LocalDate last() {
    if (until == null || until.isBefore(common.today())) {
      throw new Refusal("--until " + until + " is over already. Give a day to come.");
    }
    return until;
  }

  /**
   * What the rule finds in the entry; refused where that is nothing, or not this role's to judge.
   */
  private List<Finding> warnings(Checked checked) {
    Checker checker = new Checker(RuleBook.rules());
    List<Finding> warnings =
        checker.check(checked).stream()
            .filter(one -> one.entry().equals(entry) && one.rule().equals(rule))
            .toList();
    if (warnings.isEmpty()) {
      throw new Refusal(
          "`" + rule + "` finds nothing in `" + entry + "`, so there is nothing to accept.");
    }
    warnings.forEach(warning -> mayAccept(checker.mayAccept(warning)));
    return warnings;
  }

  private void mayAccept(Optional<Role> wanted) {
    if (wanted.isEmpty()) {
      throw new Refusal(
          "`" + rule + "` cannot be accepted. Mend it; `explain " + rule + "` says how.");
    }
    if (wanted.get() != signatory.role()) {
      throw new Refusal(
          "`"
              + rule
              + "` is accepted in the role "
              + wanted.get().word()
              + ", not "
              + signatory.role().word()
              + ".");
    }
  }

  private void write(String folder, List<Finding> warnings, LocalDate last) {
    Read<EntryRegister> old = RegisterReader.entry(common.files(), folder);
    if (!old.findings().isEmpty()) {
      throw Refusal.because("Not accepted", old.findings().get(0));
    }
    EntryRegister register = old.value();
    for (Finding warning : warnings) {
      register = register.with(accepted(warning, last));
    }
    common.files().write(RegisterReader.file(folder), RegisterWriter.bytes(register));
  }

  private AcceptedFinding accepted(Finding warning, LocalDate last) {
    return new AcceptedFinding(
        rule,
        warning.language(),
        AcceptedFinding.digest(warning),
        reason.strip(),
        signatory.role(),
        signatory.id(),
        common.today(),
        last);
  }
}
