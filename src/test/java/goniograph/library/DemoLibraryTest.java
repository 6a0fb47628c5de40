package goniograph.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.source.DiskFiles;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The clinic's library in this repository. */
class DemoLibraryTest {
  private final LibraryRead read = Library.read(DiskFiles.at(Path.of("")));

  @Test
  void readsWithoutAFinding() {
    assertEquals(
        List.of(),
        read.findings().stream()
            .map(f -> f.at().file() + ":" + f.at().line() + ":" + f.at().column() + " " + f.what())
            .toList());
    assertEquals(List.of(), read.library().broken());
  }

  @Test
  void everyStatementHasItsWordingInEveryLanguage() {
    Library library = read.library();
    for (String language : library.languages()) {
      for (Statement statement : library.statements()) {
        assertEquals(1, statement.text(language).stream().count(), statement.id() + language);
      }
    }
  }
}
