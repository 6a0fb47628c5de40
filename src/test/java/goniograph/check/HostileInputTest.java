package goniograph.check;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.source.MemoryFiles;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files made to hurt, in every place where the library has files: what is wrong is found, what is
 * harmless is silent, and nothing throws. The time is a guard against hanging, no measure.
 */
class HostileInputTest {
  private static final Duration GUARD = Duration.ofSeconds(10);
  private static final DemoLibrary DEMO = new DemoLibrary();
  private static final String ID = "ba-heel-toe-stand";
  private static final String ENTRY = "content/exercises/" + ID + "/en.md";
  private static final List<String> PLACES =
      List.of(
          ENTRY,
          "figures/" + ID + ".yaml",
          "shared/phrases/en.yaml",
          "shared/rules/dose-limits.yaml",
          "shared/rules/required-statements.yaml");

  private static final String MARKS = "{}[]:,-#&*!|>'\"%@`~\n\t 019.";

  /** Bytes to put in the place of a file's own. */
  private interface Spoiling {
    byte[] of(String text);
  }

  private static Map<String, Spoiling> found() {
    Map<String, Spoiling> all = new LinkedHashMap<>();
    all.put("deep lists", text -> bytes(head(text, "zz: " + "[".repeat(50_000))));
    all.put("deep maps", text -> bytes(head(text, "zz: " + "{a: ".repeat(50_000))));
    all.put("deep blocks", text -> bytes(head(text, deep(3_000))));
    all.put("alias bomb", text -> bytes(head(text, bomb())));
    all.put("a line of 10 MB", text -> bytes(head(text, "zz: " + "x".repeat(10_000_000))));
    all.put("a comma line of 10 MB", text -> bytes(head(text, "zz: [" + "1,".repeat(2_000_000))));
    all.put("UTF-16", text -> text.getBytes(UTF_16));
    all.put("UTF-16 without a mark", text -> text.getBytes(UTF_16LE));
    all.put("Latin-1", text -> head(text, "zz: caf\u00e9").getBytes(ISO_8859_1));
    all.put("NUL bytes", text -> bytes(head(text, "zz: a\0b")));
    all.put("NUL bytes alone", text -> new byte[1000]);
    all.put("a thousand keys", text -> bytes(head(text, keys())));
    all.put("a huge number", text -> bytes(head(text, "zz: 1e999999999")));
    all.put("huge numbers", text -> bytes(text.replaceAll("\\b\\d+\\b", "9".repeat(400))));
    all.put("nothing", text -> new byte[0]);
    return all;
  }

  private static Map<String, Spoiling> silent() {
    Map<String, Spoiling> all = new LinkedHashMap<>();
    all.put("CRLF", text -> bytes(text.replace("\n", "\r\n")));
    all.put("a byte order mark", text -> bytes("\uFEFF" + text));
    return all;
  }

  /** The guard is for files, not for loading the program. */
  @BeforeAll
  static void loaded() {
    assertEquals(List.of(), grave(DEMO.check(with(ENTRY, bytes(DEMO.text(ENTRY))))));
  }

  private static Stream<Arguments> foundEverywhere() {
    return everywhere(found());
  }

  private static Stream<Arguments> silentEverywhere() {
    return everywhere(silent());
  }

  private static Stream<Arguments> everywhere(Map<String, Spoiling> all) {
    return PLACES.stream()
        .flatMap(path -> all.keySet().stream().map(name -> Arguments.of(name, path)));
  }

  @ParameterizedTest(name = "{0} in {1}")
  @MethodSource("foundEverywhere")
  void isFound(String name, String path) {
    List<Finding> found = checked(name, found(), path);
    assertFalse(found.stream().filter(one -> one.at().file().equals(path)).toList().isEmpty());
  }

  @ParameterizedTest(name = "{0} in {1}")
  @MethodSource("silentEverywhere")
  void isHarmless(String name, String path) {
    List<Finding> found = checked(name, silent(), path);
    assertEquals(List.of(), found.stream().map(one -> one.rule() + " " + one.what()).toList());
  }

  private static List<Finding> checked(String name, Map<String, Spoiling> all, String path) {
    byte[] bytes = Objects.requireNonNull(all.get(name)).of(DEMO.text(path));
    return assertTimeout(GUARD, () -> grave(DEMO.check(with(path, bytes))));
  }

  /** One entry, its figure and all shared files, one of them spoilt. */
  private static MemoryFiles with(String path, byte[] bytes) {
    MemoryFiles files = new MemoryFiles();
    DEMO.files().entrySet().stream()
        .filter(one -> one.getKey().startsWith("shared/") || one.getKey().contains(ID))
        .forEach(one -> files.with(one.getKey(), one.getValue()));
    files.write(path, bytes);
    return files;
  }

  private static List<Finding> grave(List<Finding> all) {
    return all.stream()
        .filter(one -> one.level() != Level.NOTE && !one.rule().startsWith("signature-"))
        .toList();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(UTF_8);
  }

  /** More text at the end of the front matter, or of a file that has none. */
  private static String head(String text, String more) {
    int end = text.startsWith("---") ? text.indexOf("\n---", 4) + 1 : text.length();
    return text.substring(0, end) + more + "\n" + text.substring(end);
  }

  private static String deep(int levels) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < levels; i++) {
      text.append(" ".repeat(i)).append("zz:\n");
    }
    return text.toString();
  }

  /** Nine levels of nine aliases each: 9^9 words. */
  private static String bomb() {
    StringBuilder text = new StringBuilder("z0: &z0 [lol]\n");
    for (int i = 1; i <= 9; i++) {
      String aliases = String.join(", ", Collections.nCopies(9, "*z" + (i - 1)));
      text.append("z%d: &z%d [%s]\n".formatted(i, i, aliases));
    }
    return text.toString();
  }

  private static String keys() {
    return IntStream.range(0, 1000)
        .mapToObj(i -> "zz" + i + ": x")
        .collect(Collectors.joining("\n"));
  }

  /** Two hundred files with one to four bytes changed; none throws. */
  @Test
  void randomBytesNeverThrow() {
    List<String> thrown = new ArrayList<>();
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      String path = PLACES.get(random.nextInt(PLACES.size()));
      byte[] spoilt = spoilt(bytes(DEMO.text(path)), random);
      try {
        assertNotNull(DEMO.check(with(path, spoilt)));
      } catch (RuntimeException | StackOverflowError e) {
        thrown.add("seed " + seed + " in " + path + ": " + e + " " + e.getStackTrace()[0]);
      }
    }
    assertEquals(List.of(), thrown);
  }

  private static byte[] spoilt(byte[] bytes, Random random) {
    byte[] spoilt = bytes.clone();
    for (int times = 1 + random.nextInt(4); times > 0; times--) {
      int at = random.nextInt(spoilt.length);
      spoilt[at] =
          random.nextBoolean()
              ? (byte) random.nextInt(256)
              : (byte) MARKS.charAt(random.nextInt(MARKS.length()));
    }
    return spoilt;
  }
}
