package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import goniograph.finding.Finding;
import goniograph.source.SourceFile;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every file under {@code yaml/} and {@code text/} is named after what is wrong in it and says
 * itself, in comments, which findings are expected at which line and column.
 */
class MatterFaultsTest {
  private static final Pattern EXPECT = Pattern.compile("# expect: (\\S+ \\S+)");

  static Stream<Path> yaml() throws IOException, URISyntaxException {
    return files("yaml");
  }

  static Stream<Path> text() throws IOException, URISyntaxException {
    return files("text");
  }

  private static Stream<Path> files(String folder) throws IOException, URISyntaxException {
    Path path = Path.of(Objects.requireNonNull(MatterFaultsTest.class.getResource(folder)).toURI());
    try (Stream<Path> files = Files.list(path)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("yaml")
  void inYamlIsFoundOnceAtItsPlace(Path path) throws IOException {
    isFound(path, file -> YamlReader.read(file).findings());
  }

  @ParameterizedTest
  @MethodSource("text")
  void inAnEntryIsFoundOnceAtItsPlace(Path path) throws IOException {
    isFound(path, file -> EntryFile.read(file).findings());
  }

  private static void isFound(Path path, Function<SourceFile, List<Finding>> reader)
      throws IOException {
    SourceFile file = SourceFile.of(path.getFileName().toString(), Files.readAllBytes(path));
    List<String> expected =
        EXPECT.matcher(file.text()).results().map(match -> match.group(1)).toList();
    assertFalse(expected.isEmpty(), "the file names no expectation");
    List<Finding> findings =
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> reader.apply(file));
    assertEquals(
        expected,
        findings.stream()
            .map(f -> f.at().line() + ":" + f.at().column() + " " + f.rule())
            .toList());
    findings.forEach(f -> assertFalse(f.what().isBlank() || f.mend().isBlank()));
  }
}
