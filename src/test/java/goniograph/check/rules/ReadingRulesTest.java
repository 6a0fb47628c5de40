package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every name that reading gives to a finding has a page, so that {@code explain} knows it. */
class ReadingRulesTest {
  private static final Files SOURCES = DiskFiles.at(Path.of("src/main/java/goniograph"));

  /** A rule name as the first thing said where a finding is made. */
  private static final Pattern NAMED =
      Pattern.compile(
          "(?:error|warning|note|because|refuse|say|unknown)\\(\\s*\"([a-z]+(?:-[a-z0-9]+)+)\"");

  @ParameterizedTest
  @ValueSource(strings = {"matter", "library", "pose"})
  void haveAPage(String room) {
    Set<String> names = new TreeSet<>();
    for (String path : SOURCES.list(room)) {
      NAMED
          .matcher(ExampleLibrary.text(SOURCES, path))
          .results()
          .forEach(found -> names.add(found.group(1)));
    }
    assertFalse(names.isEmpty());
    names.forEach(name -> assertTrue(RuleBook.page(name).isPresent(), name));
  }
}
