package goniograph.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.check.RulePage;
import goniograph.check.rules.RuleBook;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** {@code docs/rules/} says what the rules say. */
class RuleDocsTest {
  private static final String COMMAND = "mvn test -Dtest=RuleDocsTest -Dgoniograph.write-docs=true";
  private static final Files DOCS = DiskFiles.at(Path.of("docs/rules"));

  @Test
  void pagesAreAsTheRulesSay() {
    if (Boolean.getBoolean("goniograph.write-docs")) {
      write();
    }
    Map<String, String> there = new TreeMap<>();
    DOCS.list("")
        .forEach(path -> there.put(path, DOCS.text(path).map(SourceFile::text).orElse("")));
    assertEquals(made(), there, "docs/rules differs from the rules; write it anew: " + COMMAND);
  }

  private static Map<String, String> made() {
    Map<String, String> pages = new TreeMap<>();
    pages.put("README.md", RuleMarkdown.index(RuleBook.pages()));
    for (RulePage page : RuleBook.pages()) {
      pages.put(page.name() + ".md", RuleMarkdown.of(page));
    }
    return pages;
  }

  private static void write() {
    DOCS.list("").forEach(DOCS::delete);
    made().forEach((path, text) -> DOCS.write(path, text.getBytes(StandardCharsets.UTF_8)));
  }
}
