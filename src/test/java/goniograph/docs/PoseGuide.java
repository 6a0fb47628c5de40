package goniograph.docs;

import goniograph.body.BasePosture;
import goniograph.body.FingerShape;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.finding.Finding;
import goniograph.pose.Aim;
import goniograph.pose.Contact;
import goniograph.pose.Focus;
import goniograph.pose.Mark;
import goniograph.pose.Part;
import goniograph.pose.PoseFile;
import goniograph.pose.Segment;
import goniograph.pose.SupportKind;
import goniograph.pose.ThingKind;
import goniograph.pose.View;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes {@code docs/poses.md} from its prose: lines such as {@code @bases} become tables of all
 * there is, {@code ```yaml draw name} blocks get their drawing, {@code ```yaml wrong} blocks their
 * findings.
 */
final class PoseGuide {
  private static final Pattern BLOCK =
      Pattern.compile("```yaml (draw|wrong) ?(\\S*)\n(.*?)```\n", Pattern.DOTALL);
  private static final Pattern LIST = Pattern.compile("@([a-z]+)");

  /** A mark's word to show it by, and what it is for. */
  private record MarkText(String word, String use) {}

  private static final Map<String, MarkText> MARKS =
      Map.of(
          "Arrow", new MarkText("arrow right hand", "the way a point takes, or where it pushes"),
          "Angle",
              new MarkText("angle right elbow", "a joint's angle; on therapists' copies alone"),
          "Target", new MarkText("target right arm front", "where it shall be felt"),
          "Landmark", new MarkText("landmark right hand nose", "what lines up with what"),
          "Ghost", new MarkText("ghost", "the start, dashed"),
          "Balance", new MarkText("balance", "where the weight falls; on therapists' copies alone"),
          "Plumb", new MarkText("plumb", "what hangs straight below the ear"));

  private final Samples samples = new Samples();
  private final GuideDrawings drawings = new GuideDrawings();
  private final Map<String, Supplier<String>> lists = new LinkedHashMap<>();

  PoseGuide() {
    lists.put("bases", this::bases);
    lists.put("joints", this::joints);
    lists.put("shapes", this::shapes);
    lists.put("segments", () -> words(Segment.words()));
    lists.put("directions", () -> words(Aim.Direction.words()));
    lists.put("supports", this::supports);
    lists.put("things", this::things);
    lists.put("contacts", this::contacts);
    lists.put("marks", this::marks);
    lists.put("focus", () -> words(List.copyOf(Focus.words().keySet())));
    lists.put("views", this::views);
  }

  /** The page; afterwards {@link #drawings} has all that it shows. */
  String page(String prose) {
    String shown =
        BLOCK
            .matcher(prose)
            .replaceAll(
                block ->
                    Matcher.quoteReplacement(
                        block(block.group(1), block.group(2), block.group(3))));
    return LIST.matcher(shown)
        .replaceAll(list -> Matcher.quoteReplacement(list(list.group(1), list.group())));
  }

  SortedMap<String, String> drawings() {
    return drawings.files();
  }

  private String list(String name, String typed) {
    Supplier<String> made = lists.get(name);
    return made == null ? typed : made.get();
  }

  private String block(String kind, String name, String text) {
    String shown = "```yaml\n" + text + "```\n\n";
    return kind.equals("draw")
        ? shown + drawings.drawn(name, samples.of(text)) + "\n"
        : shown + said(text) + "\n";
  }

  private static String said(String text) {
    List<Finding> findings = Samples.findings(text);
    if (findings.isEmpty()) {
      throw new AssertionError("nothing is wrong with\n" + text);
    }
    Finding one = findings.get(0);
    String place = "line " + one.at().line() + ", column " + one.at().column();
    return "> **" + one.rule() + "**, " + place + ": " + one.what() + " " + one.mend();
  }

  private static String words(List<String> words) {
    return "`" + String.join("`, `", words) + "`";
  }

  private static String table(String head, List<String> rows) {
    int columns = head.split("\\|", -1).length;
    return "| " + head + " |\n" + "|---".repeat(columns) + "|\n" + String.join("\n", rows);
  }

  private String bases() {
    List<String> rows = new ArrayList<>();
    for (BasePosture base : BasePosture.values()) {
      Samples.Sample sample =
          Samples.first("base-postures.yaml", base.word(), pose -> pose.base() == base);
      rows.add(
          "| `"
              + base.word()
              + "` | "
              + drawings.drawn("base-" + base.word(), sample.pose())
              + " | "
              + sample.lines("supports", "contacts")
              + " |");
    }
    return table("`base` | drawn | with", rows);
  }

  private String joints() {
    JointGuide guide = new JointGuide(samples);
    List<String> rows = new ArrayList<>();
    for (Joint joint : Joint.values()) {
      if (joint == Joint.HAND) {
        continue; // drawn by its shapes
      }
      for (Movement movement : joint.movements()) {
        String unit = movement.unit() == Movement.Unit.CM ? " (cm)" : "";
        rows.add(
            "| `"
                + joint.word()
                + "` | `"
                + movement.negative()
                + "` | "
                + drawings.drawn(JointGuide.name(joint, movement), guide.pose(joint, movement))
                + " | `"
                + movement.positive()
                + "`"
                + unit
                + " |");
      }
    }
    return table("joint | minus | drawn | plus", rows);
  }

  private String shapes() {
    List<String> rows = new ArrayList<>();
    for (FingerShape shape : FingerShape.values()) {
      PoseFile pose =
          samples.of(
              "pose: shape-"
                  + shape.word()
                  + "\nbase: standing\nfocus: right hand\ncontacts: [feet on floor]\n"
                  + "angles: {elbow right: flexion 90, hand right: shape "
                  + shape.word()
                  + "}\n");
      rows.add(
          "| `shape "
              + shape.word()
              + "` | "
              + drawings.drawn("shape-" + shape.word(), pose)
              + " |");
    }
    return table("hand | drawn", rows);
  }

  private String supports() {
    List<String> rows = new ArrayList<>();
    for (SupportKind kind : SupportKind.values()) {
      if (kind == SupportKind.FLOOR) {
        continue; // always there
      }
      Samples.Sample sample =
          Samples.first(
              "supports.yaml",
              kind.word(),
              pose -> pose.supports().stream().anyMatch(wish -> wish.kind() == kind));
      rows.add(
          "| `"
              + kind.word()
              + "` | "
              + drawings.drawn("support-" + kind.word(), sample.pose())
              + " | "
              + sample.lines("supports", "contacts")
              + " |");
    }
    return table("support | drawn | typed", rows);
  }

  private String things() {
    List<String> words = new ArrayList<>(List.of("band"));
    Arrays.stream(ThingKind.values()).map(ThingKind::word).forEach(words::add);
    List<String> rows = new ArrayList<>();
    for (String word : words) {
      Samples.Sample sample =
          Samples.first(
              "props.yaml",
              word,
              pose -> pose.props().stream().anyMatch(prop -> prop.word().equals(word)));
      rows.add(
          "| `"
              + word
              + "` | "
              + drawings.drawn("thing-" + word, sample.pose())
              + " | "
              + sample.lines("props", "contacts")
              + " |");
    }
    return table("thing | drawn | typed", rows);
  }

  private String contacts() {
    List<String> rows = new ArrayList<>();
    for (Part part : Part.values()) {
      Samples.Sample sample = sample(part);
      rows.add(
          "| "
              + partWords(part)
              + " | "
              + drawings.drawn("contact-" + part.one().replace(' ', '-'), sample.pose())
              + " | "
              + sample.lines("contacts")
              + " |");
    }
    return table("part | drawn | typed", rows);
  }

  private static Samples.Sample sample(Part part) {
    for (String file : List.of("base-postures.yaml", "supports.yaml", "trial-poses.yaml")) {
      try {
        return Samples.first(file, part.one(), pose -> touches(pose, part));
      } catch (AssertionError other) {
        continue;
      }
    }
    return Samples.first("contacts.yaml", part.one(), pose -> touches(pose, part));
  }

  private static boolean touches(PoseFile pose, Part part) {
    return pose.contacts().stream()
        .anyMatch(c -> c.part() == part && c.manner() == Contact.Manner.ON);
  }

  private static String partWords(Part part) {
    return part.paired()
        ? "`left " + part.one() + "`, `right " + part.one() + "`, `" + part.both() + "`"
        : "`" + part.one() + "`";
  }

  private String marks() {
    List<String> rows = new ArrayList<>();
    for (Class<?> kind : Mark.class.getPermittedSubclasses()) {
      MarkText mark = MARKS.get(kind.getSimpleName());
      if (mark == null) {
        throw new AssertionError("the guide tells nothing of the mark " + kind.getSimpleName());
      }
      String name = "mark-" + mark.word.replace(' ', '-');
      PoseFile pose =
          samples.of(
              "pose: "
                  + name
                  + "\nbase: standing\ncontacts: [feet on floor]\n"
                  + "start: {shoulder right: flexion 10}\n"
                  + "end: {shoulder right: flexion 85, elbow right: flexion 25}\n"
                  + "moving: right arm\nmarks: ["
                  + mark.word
                  + "]\n");
      rows.add("| `" + mark.word + "` | " + drawings.drawn(name, pose) + " | " + mark.use + " |");
    }
    return table("mark | drawn | for", rows) + "\n\n" + allMarks();
  }

  /** What the tool itself says where a mark is not known. */
  private static String allMarks() {
    return Samples.findings("pose: t\nbase: standing\ncontacts: [feet on floor]\nmarks: [qqqqqq]\n")
        .get(0)
        .mend();
  }

  private String views() {
    List<String> rows = new ArrayList<>();
    for (View view : View.values()) {
      PoseFile pose =
          samples.of(
              "pose: view-"
                  + view.word()
                  + "\nbase: sitting\nview: "
                  + view.word()
                  + "\nsupports: {chair: {}}\n"
                  + "contacts: [hips on chair, feet on floor, left hand on thighs]\n"
                  + "angles: {shoulder right: flexion 90, elbow right: flexion 10}\n"
                  + "moving: right arm\n");
      rows.add("| `" + view.word() + "` | " + drawings.drawn("view-" + view.word(), pose) + " |");
    }
    return table("`view` | drawn", rows);
  }
}
