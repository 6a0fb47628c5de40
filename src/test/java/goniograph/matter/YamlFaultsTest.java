package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import goniograph.source.SourceFile;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every file under {@code yaml/} is named after what is wrong in it and says itself, in comments,
 * which findings are expected at which line and column.
 */
class YamlFaultsTest {
  private static final Pattern EXPECT = Pattern.compile("# expect: (\\S+ \\S+)");

  static Stream<Path> faults() throws IOException, URISyntaxException {
    Path folder = Path.of(Objects.requireNonNull(YamlFaultsTest.class.getResource("yaml")).toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("faults")
  void isFoundOnceAtItsPlace(Path path) throws IOException {
    SourceFile file = SourceFile.of(path.getFileName().toString(), Files.readAllBytes(path));
    List<String> expected =
        EXPECT.matcher(file.text()).results().map(match -> match.group(1)).toList();
    assertFalse(expected.isEmpty(), "the file names no expectation");
    Yaml yaml = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> YamlReader.read(file));
    List<String> found =
        yaml.findings().stream()
            .map(f -> f.at().line() + ":" + f.at().column() + " " + f.rule())
            .toList();
    assertEquals(expected, found);
    yaml.findings().forEach(f -> assertFalse(f.what().isBlank() || f.mend().isBlank()));
  }
}
