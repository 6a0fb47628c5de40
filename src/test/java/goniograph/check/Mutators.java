package goniograph.check;

import goniograph.check.Mutant.Kind;
import goniograph.library.Vocabulary.Urgency;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Makes every mistake of every kind that the files of an entry give room for. */
final class Mutators {
  /** A slip of a unit: one that people make, and that reads as well as the right one. */
  private static final Map<String, String> UNITS =
      Map.of(
          "s", "min", "min", "s", "h", "min", "kg", "g", "g", "kg", "cm", "mm", "wk", "d", "d",
          "wk", "deg", "cm", "N", "kg");

  private static final Pattern QUANTITY =
      Pattern.compile(
          "([\\w.]+): (-?[\\d.]*\\d|\\.\\.\\d+|\\d+\\.\\.) (s|min|h|kg|g|cm|wk|d|deg|N)\\b");
  private static final Pattern RANGE_UNIT =
      Pattern.compile("\\b(\\w+): \\w+ -?\\d+\\.\\.\\d+ (deg)\\b");
  private static final Pattern LOADED =
      Pattern.compile("\\b(hold|reps|load\\.mass|mass): (\\d+(?:\\.\\d+)?)");
  private static final Pattern SIDE =
      Pattern.compile("(?<!\\b[Aa]ll )\\b([Ll]eft|[Rr]ight)\\b(?! in front of| angle)");
  private static final Pattern ARM = Pattern.compile("shoulder|elbow|forearm|wrist|hand");
  private static final Pattern LEG = Pattern.compile("hip|knee|ankle");
  private static final Pattern STATEMENT = Pattern.compile("\\bs-[a-z-]+\\b");

  /** What is named as a support; where none is needed none can be taken away. */
  private static final Pattern SUPPORT =
      Pattern.compile("(?m)^support: (?!.*none-needed).*\\n|support\\.need: (?!none)[\\w-]+, ");

  private static final Pattern FURNITURE = Pattern.compile("supports: \\{(\\w+)");

  private static final Pattern FURNITURE_WORD = Pattern.compile("(?<=[{ ])[a-z]+(?=: \\{)");

  private final DemoLibrary demo;
  private final String entry;
  private final String path;
  private final String text;
  private final List<Mutant> all = new ArrayList<>();

  private Mutators(DemoLibrary demo, String entry) {
    this.demo = demo;
    this.entry = entry;
    this.path = demo.library().entry(entry).orElseThrow().common().file().path();
    this.text = demo.text(path);
  }

  /** All mutants of an entry. */
  static List<Mutant> of(DemoLibrary demo, String entry) {
    Mutators make = new Mutators(demo, entry);
    make.statements();
    make.quantities();
    make.sides();
    make.supports();
    return make.all;
  }

  private void statements() {
    int list = text.indexOf("\nstatements: [") + 1;
    if (list == 0) {
      return;
    }
    String row = text.substring(list, text.indexOf('\n', list));
    each(
        STATEMENT,
        row,
        (found, at) -> {
          String id = found.group();
          String without = row.replaceFirst("(, )?\\b" + id + "\\b(?!-)", "").replace("[, ", "[");
          Kind kind =
              demo.library()
                      .statement(id)
                      .filter(s -> s.urgency().value() == Urgency.EMERGENCY)
                      .isPresent()
                  ? Kind.EMERGENCY
                  : Kind.STATEMENT;
          add(kind, path, list, row, without, id);
        });
  }

  private void quantities() {
    int end = text.indexOf("\n---", 4);
    String matter = text.substring(0, end);
    each(
        QUANTITY,
        matter,
        (found, at) -> {
          String unit = found.group(3);
          String is = found.group(1) + ": " + found.group(2) + " " + UNITS.get(unit);
          add(Kind.UNIT, path, at, found.group(), is, found.group(1));
        });
    each(
        RANGE_UNIT,
        matter,
        (found, at) ->
            add(Kind.UNIT, path, at, found.group(), found.group().replace("deg", "cm"), "range"));
    each(
        LOADED,
        matter,
        (found, at) -> {
          String ten =
              new java.math.BigDecimal(found.group(2)).movePointRight(1).toBigInteger().toString();
          add(Kind.TEN, path, at, found.group(), found.group(1) + ": " + ten, found.group(1));
        });
  }

  private void sides() {
    int body = text.indexOf("\n---", 4);
    each(
        SIDE,
        text.substring(body),
        (found, at) ->
            add(
                Kind.TEXT_SIDE,
                path,
                body + at,
                found.group(),
                other(found.group()),
                found.group()));
    for (String figure : demo.figures(entry)) {
      String pose = demo.text(figure);
      each(
          SIDE,
          Pattern.compile("#.*")
              .matcher(pose)
              .replaceAll(found -> " ".repeat(found.end() - found.start())),
          (found, at) ->
              add(Kind.POSE_SIDE, figure, at, found.group(), other(found.group()), limb(pose, at)));
    }
  }

  /** What is on that line, as findings call it: the joints of the limb, or the supports. */
  private static String[] limb(String pose, int at) {
    String row = pose.substring(pose.lastIndexOf('\n', at) + 1, pose.indexOf('\n', at));
    if (row.startsWith("supports")) {
      return FURNITURE_WORD.matcher(row).results().map(MatchResult::group).toArray(String[]::new);
    }
    boolean arm = ARM.matcher(row.split(":")[0]).find();
    boolean leg = LEG.matcher(row.split(":")[0]).find();
    return arm
        ? new String[] {"shoulder ", "elbow ", "forearm ", "wrist ", "hand "}
        : leg ? new String[] {"hip ", "knee ", "ankle "} : new String[0];
  }

  private static String other(String side) {
    return switch (side) {
      case "left" -> "right";
      case "right" -> "left";
      case "Left" -> "Right";
      default -> "Left";
    };
  }

  private void supports() {
    each(
        SUPPORT,
        text,
        (found, from) -> add(Kind.SUPPORT, path, from, found.group(), "", "support"));
    for (String figure : demo.figures(entry)) {
      String pose = demo.text(figure);
      each(
          Pattern.compile("(?m)^supports: .*\n"),
          pose,
          (found, from) -> {
            var name = FURNITURE.matcher(found.group());
            add(
                Kind.SUPPORT,
                figure,
                from,
                found.group(),
                "",
                name.find() ? name.group(1) : "supports");
          });
    }
  }

  /** Every statement that is more than a caution, put on every less urgent level. */
  static List<Mutant> levels(DemoLibrary demo) {
    String file = "shared/statements/en.yaml";
    String text = demo.text(file);
    List<String> words = List.of("emergency", "call-us", "ease-off", "caution");
    List<Mutant> all = new ArrayList<>();
    each(
        Pattern.compile("level: (emergency|call-us)"),
        text,
        (found, at) -> {
          int end = at + found.group().length();
          for (String word : words.subList(words.indexOf(found.group(1)) + 1, words.size())) {
            String changed = text.substring(0, at) + "level: " + word + text.substring(end);
            all.add(
                new Mutant(
                    Kind.EMERGENCY,
                    demo.library().entries().get(0).id(),
                    file,
                    changed,
                    DemoLibrary.line(text, at),
                    found.group(),
                    word,
                    List.of()));
          }
        });
    return all;
  }

  private void add(Kind kind, String file, int at, String was, String is, String... words) {
    String whole = demo.text(file);
    String changed = whole.substring(0, at) + is + whole.substring(at + was.length());
    all.add(
        new Mutant(
            kind,
            entry,
            file,
            changed,
            DemoLibrary.line(whole, at),
            was.strip(),
            is,
            List.of(words)));
  }

  private static void each(Pattern pattern, String text, BiConsumer<MatchResult, Integer> mutate) {
    pattern.matcher(text).results().forEach(found -> mutate.accept(found, found.start()));
  }
}
