package goniograph.cli;

import goniograph.check.RulePage;
import goniograph.check.rules.RuleBook;
import goniograph.exchange.RuleText;
import goniograph.finding.Nearest;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code explain RULE}: the page of a rule. */
@Command(
    name = "explain",
    description = "Says what a rule looks for, why, on what source, with a good and a bad example.")
final class ExplainCommand implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(index = "0", paramLabel = "RULE", description = "Name of a rule, as in a finding.")
  private String rule = "";

  ExplainCommand(World world) {
    this.common = new Common(world);
  }

  @Override
  public Integer call() {
    RulePage page = RuleBook.page(rule).orElseThrow(() -> new Refusal(unknown(rule)));
    common.out().print(RuleText.of(page));
    return Exit.CLEAN;
  }

  private static String unknown(String typed) {
    List<String> names = RuleBook.pages().stream().map(RulePage::name).sorted().toList();
    String hint = Nearest.hint(typed, names);
    return hint.isEmpty()
        ? "There is no rule `" + typed + "`. There are: " + String.join(", ", names) + "."
        : "There is no rule `" + typed + "`" + hint;
  }
}
