package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every name that any room gives to a finding has a page, so that {@code explain} knows it. */
class FindingNamesTest {
  private static final Files SOURCES = DiskFiles.at(Path.of("src/main/java/goniograph"));

  private static final String NAME = "\"([a-z]+(?:-[a-z0-9]+)+)\"";

  /** A rule name as the first words said where a finding is made or its rule is chosen. */
  private static final Pattern NAMED =
      Pattern.compile(
          "(?:error|warning|note|because|refuse|say|fault|unknown|Forms|matching)"
              + "\\(\\s*(?:[A-Z]+,\\s*)?"
              + NAME
              + "|(?:[A-Z]+_[A-Z_, ]*|default) -> "
              + NAME
              + "|Finding\\.[a-z]+\\(\\s*\"([a-z]+)\"");

  @Test
  void haveAPage() {
    Map<String, String> named = named();
    Set<String> known = names(RuleBook.pages().stream());
    named.forEach((name, path) -> assertTrue(known.contains(name), name + " in " + path));
  }

  /** The pages that no rule class owns are all found by the search, so it is not blind. */
  @Test
  void theSearchSeesWhatItShould() {
    Set<String> owned = names(RuleBook.rules().stream().map(Rule::page));
    Set<String> free = names(RuleBook.pages().stream());
    free.removeAll(owned);
    free.removeAll(named().keySet());
    assertEquals(Set.of(), free);
  }

  /** Names of findings in the sources, with the file that makes them. */
  private static Map<String, String> named() {
    Map<String, String> named = new TreeMap<>();
    for (String path : SOURCES.list("")) {
      NAMED
          .matcher(ExampleLibrary.text(SOURCES, path))
          .results()
          .forEach(found -> named.put(name(found), path));
    }
    return named;
  }

  private static String name(MatchResult found) {
    return IntStream.rangeClosed(1, found.groupCount())
        .mapToObj(found::group)
        .filter(Objects::nonNull)
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> names(Stream<RulePage> pages) {
    return pages.map(RulePage::name).collect(Collectors.toCollection(TreeSet::new));
  }
}
