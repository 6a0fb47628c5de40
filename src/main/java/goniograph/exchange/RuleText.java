package goniograph.exchange;

import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** The page of a rule as text for a terminal. */
public final class RuleText {
  private RuleText() {}

  /** The whole page; every line ends with a line feed. */
  public static String of(RulePage page) {
    return page.name()
        + "\n"
        + paragraph("What", page.what())
        + paragraph("Why", page.why())
        + paragraph("Source", page.source())
        + paragraph("Who may accept it", page.acceptance().words())
        + page.examples().stream().map(RuleText::example).collect(Collectors.joining());
  }

  private static String paragraph(String label, String text) {
    return "\n" + label + ": " + text + "\n";
  }

  private static String example(Example example) {
    return "\nGood, in "
        + example.file()
        + ":\n"
        + indented(example.good())
        + "Bad, found between « and »:\n"
        + indented(example.marked())
        + example.alongside().stream().map(RuleText::alongside).collect(Collectors.joining());
  }

  private static String alongside(Example.Edit edit) {
    return "where in " + edit.file() + " " + change(edit, RuleText::indented);
  }

  /** What a change beside a bad passage does, with passages written by {@code block}. */
  static String change(Example.Edit edit, UnaryOperator<String> block) {
    if (edit.from().equals(Example.Edit.WHOLE)) {
      return "nothing stands: there is no such file.\n";
    }
    if (edit.to().isEmpty()) {
      return "this does not stand:\n" + block.apply(edit.from());
    }
    return "this stands:\n" + block.apply(edit.to());
  }

  private static String indented(String passage) {
    return visible(passage).lines().map(line -> "    " + line + "\n").collect(Collectors.joining());
  }

  /** Control characters as the pictures that Unicode has for them, so that they can be seen. */
  static String visible(String passage) {
    return passage
        .codePoints()
        .map(c -> c < 0x20 && c != '\n' ? 0x2400 + c : c)
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }
}
