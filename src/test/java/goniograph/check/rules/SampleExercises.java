package goniograph.check.rules;

import goniograph.source.MemoryFiles;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes small exercises for tests: a right one, with what a test says laid over it. Values are the
 * YAML behind the key; "" leaves the key out.
 */
final class SampleExercises {
  private static final Map<String, String> USUAL = new LinkedHashMap<>();

  static {
    USUAL.put("region", "[elbow]");
    USUAL.put("aim", "control");
    USUAL.put("type", "active-range");
    USUAL.put("act", "");
    USUAL.put("position", "sitting");
    USUAL.put("lies_on", "");
    USUAL.put("stance", "");
    USUAL.put("vision", "");
    USUAL.put("surface", "");
    USUAL.put("head_movement", "");
    USUAL.put("feet", "shoes");
    USUAL.put("support", "{ need: none-needed }");
    USUAL.put("sides", "{ mode: both-together }");
    USUAL.put("figure", "");
    USUAL.put("dose", "");
    USUAL.put("ladder", "");
    USUAL.put("equipment", "[]");
    USUAL.put("supervision", "first-time-shown");
    USUAL.put("precautions", "[]");
    USUAL.put("statements", "[s-chest, s-pain-ease, s-morning, s-worse]");
    USUAL.put("evidence", "[]");
    USUAL.put("review_due", "2027-05-31");
    USUAL.put("do", "Bend and stretch slowly.");
    USUAL.put("easier", "Make the movement smaller.");
    USUAL.put("harder", "Make the movement slower.");
  }

  /** Besides the frequency, pain, load and duration that every sample has. */
  private static final String USUAL_DOSE =
      "sets: 2, reps: 8, effort: 2..3, tempo: { lift: 2 s, lower: 2 s }, rest: 30 s";

  private SampleExercises() {}

  static String path(String id) {
    return "content/exercises/" + id + "/en.md";
  }

  /** An exercise of this id in a library. */
  static MemoryFiles in(MemoryFiles files, String id, Map<String, String> laidOver) {
    return files.with(path(id), text(id, laidOver));
  }

  static String text(String id, Map<String, String> laidOver) {
    Map<String, String> fields = new LinkedHashMap<>(USUAL);
    fields.put("figure", id);
    fields.putAll(laidOver);
    String given = fields.getOrDefault("dose", "");
    String dose = given.isEmpty() ? USUAL_DOSE : given;
    fields.put("dose", "{ " + dose + dose(dose) + " }");
    StringBuilder text =
        new StringBuilder("---\nschema: entry/1\nid: " + id + "\nkind: exercise\n");
    fields.forEach(
        (key, value) -> {
          if (!value.isEmpty() && !isText(key)) {
            text.append(key).append(": ").append(value).append('\n');
          }
        });
    text.append("---\n# Slow bend\n## why\nTo move with less ache.\n## do\n1. ")
        .append(fields.get("do"))
        .append("\n## feel\nEasy work.\n## easier\n")
        .append(fields.get("easier"));
    String harder = fields.getOrDefault("harder", "");
    if (!harder.isEmpty()) {
      text.append("\n## harder\n").append(harder);
    }
    return text.append("\n## landmark\nelbow touching your side\n").toString();
  }

  private static String dose(String given) {
    StringBuilder more = new StringBuilder();
    addUnless(given, "frequency", "{ per_day: 1, days_per_week: 3 }", more);
    addUnless(given, "pain", "{ during_max: 3 }", more);
    addUnless(given, "load", "{ kind: none }", more);
    addUnless(given, "duration", "4 wk", more);
    return more.toString();
  }

  private static void addUnless(String given, String key, String value, StringBuilder more) {
    if (!given.contains(key)) {
      more.append(", ").append(key).append(": ").append(value);
    }
  }

  private static boolean isText(String key) {
    return key.equals("do") || key.equals("easier") || key.equals("harder");
  }
}
