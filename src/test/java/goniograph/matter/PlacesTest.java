package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Property: whatever stands in front, in whatever script and with whatever line ends, the place of
 * a scalar, a piece or a slot, cut out of the file's bytes, is the text that was written there.
 */
class PlacesTest {
  private static final List<String> WORDS =
      List.of(
          "heel",
          "toe",
          "żółć",
          "ação",
          "đứng",
          "كتف",
          "الركبة",
          "घुँडा",
          "क्षण",
          "😀",
          "👩🏽‍🦽",
          "e\u0301",
          "٣",
          "\u200Fيمين",
          "膝",
          "naïve",
          "ﬁ",
          "\uD834\uDD1E");
  private final List<String> keys = new ArrayList<>();
  private final List<String> values = new ArrayList<>();
  private final List<String> pieces = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void placesAreTrueBehindFrontMatterOfAnyLength(String lineEnd) {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      check(document(random).replace("\n", lineEnd), "seed " + seed);
    }
  }

  private void check(String text, String message) {
    EntryFile entry = EntryFile.read(SourceFile.of("en.md", text));
    assertEquals(List.of(), entry.findings(), message);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Node.Fields matter = (Node.Fields) entry.frontMatter().orElseThrow().root().orElseThrow();
    assertEquals(
        keys, matter.fields().stream().map(field -> cut(bytes, field.keyAt())).toList(), message);
    assertEquals(
        values,
        matter.fields().stream().map(field -> cut(bytes, field.value().at())).toList(),
        message);
    List<Piece> read = entry.body().pieces();
    assertEquals(pieces, read.stream().map(Piece::text).toList(), message);
    assertEquals(pieces, read.stream().map(piece -> cut(bytes, piece.at())).toList(), message);
    for (Piece piece : read) {
      for (Inline.Slot slot : piece.slots()) {
        assertEquals("{" + slot.name() + "}", cut(bytes, slot.at()), message);
      }
      lineAndColumn(text, piece, message);
    }
  }

  /** A second way to the place: count code points through the lines of the text. */
  private static void lineAndColumn(String text, Piece piece, String message) {
    String line = text.split("\n", -1)[piece.at().line() - 1];
    int start = line.offsetByCodePoints(0, piece.at().column() - 1);
    assertEquals(piece.text(), line.substring(start).strip(), message);
  }

  private String document(Random random) {
    keys.clear();
    values.clear();
    pieces.clear();
    StringBuilder text = new StringBuilder("---\n");
    int fields = 1 + random.nextInt(random.nextInt(10) == 0 ? 900 : 12);
    for (int i = 0; i < fields; i++) {
      keys.add(word(random) + i);
      values.add(value(random));
      text.append(keys.get(i)).append(": ").append(values.get(i)).append(comment(random));
    }
    text.append("---\n# ").append(piece(random)).append("\n");
    for (int section = 0; section < 3; section++) {
      text.append("\n".repeat(random.nextInt(2))).append("## key-").append(section).append("\n");
      section(random, text);
    }
    return text.toString();
  }

  private void section(Random random, StringBuilder text) {
    if (random.nextBoolean()) {
      text.append(" ".repeat(random.nextInt(3))).append(piece(random));
      text.append(" ".repeat(random.nextInt(2))).append("\n\n");
    }
    boolean steps = random.nextBoolean();
    for (int item = 1; item <= random.nextInt(5); item++) {
      text.append(steps ? item + ". " : "- ").append(piece(random)).append("\n");
    }
  }

  private static String value(Random random) {
    String words = words(random);
    return switch (random.nextInt(4)) {
      case 0 -> "'" + words + "'";
      case 1 -> "\"" + words + "\"";
      case 2 -> "[" + words + ", " + words + "]";
      default -> words;
    };
  }

  private static String comment(Random random) {
    return random.nextInt(3) == 0 ? "  # " + words(random) + "\n" : "\n";
  }

  private String piece(Random random) {
    String slot = random.nextInt(3) == 0 ? " {hold.count} " + word(random) : "";
    String stress = random.nextInt(4) == 0 ? " *" + word(random) + "*" : "";
    pieces.add(words(random) + slot + stress);
    return pieces.get(pieces.size() - 1);
  }

  private static String words(Random random) {
    StringBuilder words = new StringBuilder(word(random));
    for (int i = random.nextInt(6); i > 0; i--) {
      words.append(' ').append(word(random));
    }
    return words.toString();
  }

  private static String word(Random random) {
    return WORDS.get(random.nextInt(WORDS.size()));
  }

  private static String cut(byte[] bytes, Span at) {
    return new String(Arrays.copyOfRange(bytes, at.start(), at.end()), StandardCharsets.UTF_8);
  }
}
