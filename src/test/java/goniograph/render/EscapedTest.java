package goniograph.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.sheet.Drawings;
import goniograph.sheet.Sheet;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import goniograph.testing.Programs;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What stands in the content is text and nothing else, on screen and on paper. */
class EscapedTest {
  private static final String WORDS = "<b>&\"'</b>";
  private static final Pattern UNSAFE = Pattern.compile("\\$unsafe\\{([a-zA-Z.]+)");

  /** Drawings and glyphs that we make, styles of ours, and lengths worked out by the plan. */
  private static final Pattern OURS =
      Pattern.compile(
          "style|glyphs\\.[a-zA-Z]+|plan\\.[a-zA-Z]+|svg|panel\\.svg|motion\\.svg|drawings\\.panels");

  /** The sample with the words in the place of every text, drawings alone excepted. */
  private static Sheet hostile() {
    return (Sheet) hostile(SampleSheet.chairRise(), "");
  }

  private static Object hostile(Object value, String name) {
    if (value instanceof String text) {
      return Set.of("svg", "entry", "language", "layout", "paper").contains(name) || text.isEmpty()
          ? text
          : WORDS;
    }
    if (value instanceof Drawings.Motion motion) {
      return new Drawings.Motion(motion.id(), motion.svg(), motion.style(), WORDS);
    }
    if (value instanceof Optional<?> maybe) {
      return maybe.map(one -> hostile(one, name));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(one -> hostile(one, name)).toList();
    }
    return value instanceof Record whole ? rebuilt(whole) : value;
  }

  private static Object rebuilt(Record whole) {
    List<Class<?>> types = new ArrayList<>();
    List<Object> values = new ArrayList<>();
    try {
      for (RecordComponent part : whole.getClass().getRecordComponents()) {
        types.add(part.getType());
        part.getAccessor().setAccessible(true);
        values.add(hostile(part.getAccessor().invoke(whole), part.getName()));
      }
      return whole
          .getClass()
          .getDeclaredConstructor(types.toArray(Class<?>[]::new))
          .newInstance(values.toArray());
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(whole.toString(), e);
    }
  }

  @Test
  void onScreenNoTextBecomesMarkup() {
    String html = ScreenRenderer.html(hostile());
    assertFalse(html.contains("<b>&"), html);
    assertTrue(html.contains("<title>&lt;b&gt;&amp;"), html);
    assertTrue(html.contains("<h1>&lt;b&gt;&amp;"), html);
    assertFalse(Pattern.compile("=\"[^\"<>]*<b>").matcher(html).find(), html);
  }

  @Test
  void onPaperItIsReadAsItWasWritten() {
    Paper paper =
        new PaperRenderer()
            .render(hostile(), Layout.STANDARD, "0".repeat(64), LocalDate.of(2026, 11, 25));
    String text = Programs.popplerText(paper.pdf());
    assertTrue(text.contains(WORDS), text);
  }

  @Test
  void templatesLetOnlyWhatWeMadeThroughAsItIs() {
    Files templates = DiskFiles.at(Path.of("src/main/jte"));
    Set<String> others = new TreeSet<>();
    for (String path : templates.list("")) {
      String template = templates.text(path).map(SourceFile::text).orElseThrow();
      UNSAFE
          .matcher(template)
          .results()
          .map(found -> found.group(1))
          .filter(what -> !OURS.matcher(what).matches())
          .forEach(what -> others.add(path + ": " + what));
    }
    assertEquals(Set.of(), others);
  }
}
