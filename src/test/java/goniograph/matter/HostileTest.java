package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import goniograph.source.SourceFile;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Inputs that wear out parsers: none may throw or hang. The limit is there to end a hang. */
class HostileTest {
  private static final String HEAD = "---\nid: x\n---\n# T\n## why\n";
  private static final Duration LIMIT = Duration.ofSeconds(60);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[",
        "]",
        "*",
        "**",
        "_",
        "`",
        "> ",
        "- ",
        "1. ",
        "<",
        "![",
        "[a](",
        "{",
        "}",
        "{a}",
        "*a_ ",
        "<!--",
        "&",
        "\\",
        "\t",
        "#",
        "---\n",
        "[a]: b\n",
        "a\n\n",
        "\u202E",
        "{{",
        "a**b"
      })
  void oneThingAgainAndAgain(String part) {
    String text = HEAD + part.repeat(3000) + "\n";
    assertTimeoutPreemptively(
        LIMIT, () -> assertNotNull(EntryFile.read(SourceFile.of("x.md", text))));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[", "{", "{a: ", "- ", "? ", "&a ", "*a ", "!a ", "'", "\"", "| ", "a: ", "\t", "%", "#",
        "a:\n", "-\n", "---\n", "<<: ", "\\", "\uFEFF", "\u2028", "\u0085"
      })
  void oneThingAgainAndAgainInYaml(String part) {
    String text = part.repeat(3000) + "\n";
    assertTimeoutPreemptively(
        LIMIT, () -> assertNotNull(YamlReader.read(SourceFile.of("x.yaml", text))));
  }

  @Test
  void randomSyntaxNeverThrows() {
    String[] parts = {
      "a",
      ": ",
      "- ",
      "[",
      "]",
      "{",
      "}",
      ", ",
      "\n",
      "\n  ",
      "'",
      "\"",
      "&x ",
      "*x",
      "!t ",
      "|",
      ">",
      "#",
      "---\n",
      "?",
      "\t",
      "😀",
      "\uD83D",
      "\r\n",
      "\r",
      "# ",
      "## ",
      "1. ",
      "*",
      "_",
      "`",
      "<b>",
      "![",
      "](",
      "&amp;",
      "\\",
      "\u0000",
      "ع",
      "...\n",
      "%YAML 1.1\n"
    };
    for (int seed = 0; seed < 4000; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "---\n" : "");
      for (int i = random.nextInt(40); i > 0; i--) {
        text.append(parts[random.nextInt(parts.length)]);
      }
      SourceFile file = SourceFile.of("x", text.toString());
      assertNotNull(YamlReader.read(file), "seed " + seed);
      assertNotNull(EntryFile.read(file), "seed " + seed);
    }
  }

  @Test
  void randomBytesNeverThrow() {
    for (int seed = 0; seed < 500; seed++) {
      byte[] bytes = new byte[300];
      new Random(seed).nextBytes(bytes);
      SourceFile file = SourceFile.of("x", bytes);
      assertNotNull(YamlReader.read(file), "seed " + seed);
      assertNotNull(EntryFile.read(file), "seed " + seed);
    }
    String all = new String(new byte[] {0, 1, 2}, StandardCharsets.UTF_8);
    assertNotNull(EntryFile.read(SourceFile.of("x", all)));
  }
}
