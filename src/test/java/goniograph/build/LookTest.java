package goniograph.build;

import goniograph.library.*;
import goniograph.register.*;
import goniograph.render.*;
import goniograph.source.*;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.*;
import org.junit.jupiter.api.Test;

class LookTest {
  @Test
  void look() throws Exception {
    System.setProperty("look", "true");
    LibraryRead read = Library.read(DiskFiles.at(Path.of(".")));
    read.findings()
        .forEach(f -> System.out.println(f.at().file() + ":" + f.at().line() + " " + f.what()));
    Library library = read.library();
    Scenes scenes = new Scenes(library);
    PhraseBooks books = PhraseBooks.of(library);
    for (String lang : List.of("en", "ar")) {
      books.in(lang).get().problems().forEach(System.out::println);
      for (Entry e : library.entries()) {
        Job job = new Job(e, lang, Optional.empty(), Layout.STANDARD, "a4");
        Standing standing =
            new Standing(e.id(), lang, "0".repeat(64), List.of(), Optional.empty(), true);
        Printed p =
            new SheetPrinter(
                    library,
                    library.clinic().get(),
                    books,
                    scenes,
                    new Approvals(new Releases(List.of())),
                    LocalDate.of(2026, 11, 25))
                .print(job, standing);
        System.out.println(e.id() + " " + lang + " " + p.leftOut());
        if (p.pdf().length > 0)
          goniograph.testing.PdfConformance.failures(p.pdf()).forEach(System.out::println);
        p.findings().forEach(f -> System.out.println("   " + f.what()));
        if (p.pdf().length > 0) {
          java.nio.file.Files.write(
              Path.of("build-output/look-" + e.id() + "-" + lang + ".pdf"), p.pdf());
          java.nio.file.Files.writeString(
              Path.of("build-output/look-" + e.id() + "-" + lang + ".html"), p.html());
        }
      }
    }
  }
}
