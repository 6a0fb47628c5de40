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
import goniograph.source.Files;
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

  @Option(
      names = "--as",
      required = true,
      paramLabel = "ID",
      description = "Who accepts: a role id such as clinician-1, never a name.")
  private String by = "";

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      converter = SignCommand.RoleWord.class,
      description = "In which capacity; `explain RULE` says whose it is.")
  private Role role = Role.AUTHOR;

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
    Files files = common.files();
    LocalDate last = last();
    Checked checked = Checked.of(files, common.today());
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
    Entry read =
        checked.library().entry(entry).orElseThrow(() -> new Refusal("Mend its errors first."));
    String path = read.common().file().path();
    String folder = path.substring(0, path.lastIndexOf('/'));
    Read<EntryRegister> old = RegisterReader.entry(files, folder);
    old.findings().stream()
        .findFirst()
        .ifPresent(
            damage -> {
              throw Refusal.because("Not accepted", damage);
            });
    EntryRegister register = old.value();
    for (Finding warning : warnings) {
      register = register.with(accepted(warning, last));
    }
    files.write(RegisterReader.file(folder), RegisterWriter.bytes(register));
    common
        .out()
        .println(
            "Accepted `"
                + rule
                + "` in `"
                + entry
                + "`, by "
                + by
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

  private void mayAccept(Optional<Role> wanted) {
    if (wanted.isEmpty()) {
      throw new Refusal(
          "`" + rule + "` cannot be accepted. Mend it; `explain " + rule + "` says how.");
    }
    if (wanted.get() != role) {
      throw new Refusal(
          "`"
              + rule
              + "` is accepted in the role "
              + wanted.get().word()
              + ", not "
              + role.word()
              + ".");
    }
  }

  private AcceptedFinding accepted(Finding warning, LocalDate last) {
    return new AcceptedFinding(
        rule,
        warning.language(),
        AcceptedFinding.digest(warning),
        reason.strip(),
        role,
        Blanks.id(by),
        common.today(),
        last);
  }
}
