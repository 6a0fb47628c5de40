package goniograph.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.regex.Pattern;

/** Entries as right as those of the library: what changes in them is allowed. */
final class CleanVariants {
  private static final List<BiFunction<String, Random, String>> CHANGES =
      List.of(
          CleanVariants::comment,
          CleanVariants::space,
          CleanVariants::order,
          CleanVariants::block,
          CleanVariants::dose,
          CleanVariants::words);

  /** Words that say the same. */
  private static final Map<String, String> WORDS =
      Map.of(
          "Sit tall", "Sit upright",
          "Stand tall", "Stand upright",
          " slowly", " gently",
          "Carry on", "Keep going",
          "Your ", "The ",
          "Then do it again", "Then do the same again",
          "A little ", "Some ",
          " is fine", " is normal",
          " close to ", " near ",
          " firm ", " solid ");

  /** Dose values, and others inside the same limits. */
  private static final Map<String, List<String>> DOSES =
      Map.of(
          "rest: 20 s", List.of("rest: 25 s", "rest: 30 s"),
          "rest: 30 s", List.of("rest: 40 s", "rest: 45 s"),
          "rest: 60 s", List.of("rest: 45 s", "rest: 1 min", "rest: 75 s"),
          "rest: 90 s", List.of("rest: 80 s", "rest: 100 s"),
          "relax: 20 s", List.of("relax: 15 s", "relax: 25 s"),
          "relax: 5 s", List.of("relax: 6 s", "relax: 8 s"),
          "duration: 8 wk", List.of("duration: 10 wk", "duration: 12 wk", "duration: 56 d"),
          "stay_at_least: 7 d", List.of("stay_at_least: 1 wk", "stay_at_least: 8 d"),
          "days_per_week: 5", List.of("days_per_week: 4"));

  private CleanVariants() {}

  /** The text of an entry with one to three allowed changes. */
  static String of(String text, int seed) {
    Random random = new Random(seed);
    List<BiFunction<String, Random, String>> changes = new ArrayList<>(CHANGES);
    Collections.shuffle(changes, random);
    String changed = text;
    for (BiFunction<String, Random, String> change : changes.subList(0, 1 + random.nextInt(3))) {
      changed = change.apply(changed, random);
    }
    return changed.equals(text) ? comment(text, random) : changed;
  }

  private static String comment(String text, Random random) {
    return afterFrontMatterLine(text, random, "# reviewed twice, see the minutes\n");
  }

  private static String space(String text, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> text.replace("\n## ", "\n\n## ");
      case 1 -> text + "\n\n";
      case 2 -> text.replace("\n", "\r\n");
      default -> afterFrontMatterLine(text, random, "\n");
    };
  }

  /** Behind one of the first lines of the front matter, which are fields of one line. */
  private static String afterFrontMatterLine(String text, Random random, String line) {
    int at = 0;
    for (int lines = 2 + random.nextInt(2); lines > 0; lines--) {
      at = text.indexOf('\n', at) + 1;
    }
    return text.substring(0, at) + line + text.substring(at);
  }

  private static String order(String text, Random random) {
    String shuffled = statements(text, random);
    return random.nextBoolean()
        ? shuffled
        : shuffled.replaceFirst("(?m)^(schema: .*\\n)(id: .*\\n)", "$2$1");
  }

  private static String statements(String text, Random random) {
    return Pattern.compile("statements: \\[([^\\]]*)]")
        .matcher(text)
        .replaceFirst(
            found -> {
              List<String> ids = new ArrayList<>(Arrays.asList(found.group(1).split(",\\s*")));
              Collections.shuffle(ids, random);
              return "statements: [" + String.join(", ", ids) + "]";
            });
  }

  /** A list in brackets as a list of lines. */
  private static String block(String text, Random random) {
    return Pattern.compile("(?m)^(region|statements): \\[([^\\]]*)]")
        .matcher(text)
        .replaceAll(
            found ->
                found.group(1) + ":\n  - " + String.join("\n  - ", found.group(2).split(",\\s*")));
  }

  private static String dose(String text, Random random) {
    List<String> there = DOSES.keySet().stream().filter(text::contains).sorted().toList();
    if (there.isEmpty()) {
      return text;
    }
    String was = there.get(random.nextInt(there.size()));
    List<String> others = DOSES.getOrDefault(was, List.of());
    return text.replace(was, others.get(random.nextInt(others.size())));
  }

  private static String words(String text, Random random) {
    int body = text.indexOf("\n---", 4);
    List<String> there =
        WORDS.keySet().stream().filter(text.substring(body)::contains).sorted().toList();
    if (there.isEmpty()) {
      return text;
    }
    String was = there.get(random.nextInt(there.size()));
    return text.substring(0, body)
        + text.substring(body).replace(was, WORDS.getOrDefault(was, was));
  }
}
