package goniograph.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.rules.ExampleLibrary;
import goniograph.check.rules.RuleBook;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.render.Layout;
import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import goniograph.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The examples of findings that only printing makes are true. */
class PrintPagesTest {
  private static BuildReport built(Files files) {
    Examined examined = Examined.of(files, ExampleLibrary.TODAY);
    BuildOrder order =
        new BuildOrder(
            List.of("hp-chair-rise"), List.of("en"), List.of(Layout.STANDARD), List.of("a4"), 1);
    return new Builder(examined, ExampleLibrary.TODAY, order, line -> {}).build(new MemoryFiles());
  }

  private static List<Finding> errors(BuildReport report) {
    return report.findings().stream().filter(one -> one.level() == Level.ERROR).toList();
  }

  @Test
  void areTrue() {
    for (RulePage page : RuleBook.printing()) {
      for (Example example : page.examples()) {
        assertEquals(List.of(), errors(built(ExampleLibrary.with(example.goodEdits()))));
        Files bad = ExampleLibrary.with(example.badEdits());
        List<Finding> found = errors(built(bad));
        assertEquals(List.of(page.name()), found.stream().map(Finding::rule).toList());
        SourceFile file = bad.text(example.file()).orElseThrow();
        int at = file.text().indexOf(example.bad());
        assertEquals(
            file.span(at + example.start(), at + example.end()), found.get(0).at(), page.name());
      }
    }
  }

  /** A page that is too full names the block, the lines and the first that does not fit. */
  @Test
  void aPageThatIsTooFullSaysWhere() {
    RulePage page =
        RuleBook.printing().stream()
            .filter(one -> one.name().equals("page-overflow"))
            .findFirst()
            .orElseThrow();
    BuildReport report = built(ExampleLibrary.with(page.examples().get(0).badEdits()));
    String what = errors(report).get(0).what();
    assertTrue(
        what.matches(
            "The block `steps` is \\d+ lines too long for `standard` on a4; the first that does"
                + " not fit is “\\p{L}.*”\\."),
        what);
    assertEquals(List.of(), report.sheets());
    assertEquals(
        List.of("en/standard-a4/hp-chair-rise: it does not fit or cannot be shown"),
        report.leftOut());
  }
}
