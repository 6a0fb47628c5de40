package goniograph.exchange;

import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;
import java.util.stream.Collectors;

/** The pages of the rules as Markdown, for {@code docs/rules/}. */
public final class RuleMarkdown {
  private RuleMarkdown() {}

  /** One page. */
  public static String of(RulePage page) {
    return "# "
        + page.name()
        + "\n\n"
        + page.what()
        + "\n\n**Why.** "
        + page.why()
        + "\n\n**Source.** "
        + page.source()
        + ".\n\n**Who may accept it.** "
        + page.acceptance().words()
        + "\n"
        + page.examples().stream().map(RuleMarkdown::example).collect(Collectors.joining());
  }

  /** The page that lists them, in the order of the book. */
  public static String index(List<RulePage> pages) {
    return "# Rules\n\nMade from the rules themselves; `goniograph explain RULE` prints the same.\n"
        + "Findings that reading a file gives come first.\n\n"
        + pages.stream()
            .map(page -> "- [" + page.name() + "](" + page.name() + ".md): " + page.what() + "\n")
            .collect(Collectors.joining());
  }

  private static String example(Example example) {
    return "\nGood, in `"
        + example.file()
        + "`:\n\n"
        + block(example.good())
        + "\nBad; the finding is between « and »:\n\n"
        + block(example.marked())
        + example.alongside().stream().map(RuleMarkdown::alongside).collect(Collectors.joining());
  }

  private static String alongside(Example.Edit edit) {
    return "\nwhere in `"
        + edit.file()
        + "` "
        + RuleText.change(edit, passage -> "\n" + block(passage));
  }

  private static String block(String passage) {
    return "```\n" + RuleText.visible(passage).stripTrailing() + "\n```\n";
  }
}
