package goniograph.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.Side;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.source.DiskFiles;
import goniograph.source.MemoryFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which sides a drawer copy is made for: a side is never guessed (job.md 3.7 and 5.2). */
class SidesTest {
  private static final String ENTRY = "content/exercises/hp-chair-rise/en.md";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mode: both-together | -",
        "mode: left, count: per-side | LEFT",
        "mode: right, count: per-side | RIGHT",
        "mode: affected, count: per-side | LEFT RIGHT",
        "mode: affected, count: per-side, ask_at_print: true | LEFT RIGHT",
        "mode: each-in-turn, count: per-side, ask_at_print: true | LEFT RIGHT",
        "mode: each-in-turn, count: per-side | -"
      })
  void aSideIsNeverGuessed(String sides, String made) {
    DiskFiles demo = DiskFiles.at(Path.of(""));
    String text = demo.text(ENTRY).orElseThrow().text();
    MemoryFiles files = new MemoryFiles();
    files.write(ENTRY, text.replace("mode: both-together", sides).getBytes(StandardCharsets.UTF_8));
    Exercise exercise = Library.read(files).library().exercise("hp-chair-rise").orElseThrow();
    List<Optional<Side>> expected =
        made.equals("-")
            ? List.of(Optional.empty())
            : List.of(made.split(" ")).stream().map(Side::valueOf).map(Optional::of).toList();
    assertEquals(expected, Builder.sides(exercise));
  }
}
