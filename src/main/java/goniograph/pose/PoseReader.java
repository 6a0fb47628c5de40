package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Body;
import goniograph.finding.Finding;
import goniograph.matter.FieldWords;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Reads pose files. What is not understood gives a finding at its exact place and is left out, so
 * that the rest can be drawn while an author is still typing.
 */
public final class PoseReader {
  private static final FieldWords WORDS = new FieldWords(PoseReader.class, "fields.properties");
  private static final List<String> VIAS = List.of("via", "via 2", "via 3");

  private final Complaint complaint;
  private final Consumer<Finding> findings;

  private PoseReader(Consumer<Finding> findings) {
    this.findings = findings;
    this.complaint = new Complaint(findings);
  }

  /** The poses of a file, one a document. */
  public static List<PoseFile> read(SourceFile file, Consumer<Finding> findings) {
    Yaml yaml = YamlReader.read(file);
    yaml.findings().forEach(findings);
    return yaml.documents().stream().flatMap(node -> read(node, findings).stream()).toList();
  }

  /** One pose; empty where it has no id or no base posture. */
  public static Optional<PoseFile> read(Node node, Consumer<Finding> findings) {
    Consumer<Finding> told =
        node instanceof Node.Fields fields
            ? WORDS.explaining(fields, path -> true, findings)
            : findings;
    return new Value("pose", Optional.of(node), told)
        .form("the pose file", form -> new PoseReader(told).pose(form))
        .flatMap(Located::value);
  }

  private Optional<PoseFile> pose(Form form) {
    Optional<Located<String>> id = form.required("pose", "my-pose").as(Spellings.ID_WORD);
    Optional<BasePosture> base =
        form.required("base", "standing").as(Spellings.oneOf(bases())).map(Located::value);
    Optional<PoseFile> pose = id.flatMap(name -> base.map(posture -> pose(name, posture, form)));
    if (pose.isEmpty()) { // read on, so that the rest of the file is judged too
      pose(new Located<>("", form.at()), BasePosture.STANDING, form);
    }
    return pose;
  }

  private PoseFile pose(Located<String> id, BasePosture base, Form form) {
    List<SupportWish> supports = SupportReader.supports(form.optional("supports"), complaint);
    List<PropWish> props = PropReader.read(form.optional("props"));
    ContactReader contacts = new ContactReader(targets(supports, props), complaint);
    return new PoseFile(
        id.value(),
        id.at(),
        base,
        person(form),
        form.optional("view")
            .as(Spellings.oneOf(View.class))
            .map(Located::value)
            .orElse(View.usual(base)),
        camera(form.optional("camera")),
        supports,
        props,
        contacts.read(form.optional("contacts")),
        AngleReader.read(form.optional("angles"), complaint),
        frames(form, contacts),
        Marks.moving(form.optional("moving"), complaint),
        Marks.marks(form.optional("marks"), complaint),
        form.optional("focus").as(Spellings.oneOf(Focus.words())).map(Located::value),
        frame(form, "wrong", "wrong", contacts),
        form.optional("balance").as(Spellings.oneOf(List.of("auto"))).isPresent());
  }

  private static List<String> targets(List<SupportWish> supports, List<PropWish> props) {
    List<String> targets = new ArrayList<>(List.of("floor"));
    targets.addAll(Contact.BODY);
    supports.forEach(support -> targets.addAll(support.targets()));
    props.forEach(prop -> targets.add(prop.word()));
    return targets;
  }

  private static Body person(Form form) {
    return form.optional("person")
        .form(
            "the person",
            person ->
                person
                    .optional("height")
                    .as(SupportReader.centimetres(80, 230))
                    .map(height -> new Body(height.value(), Body.ADULT.massKg())))
        .flatMap(Located::value)
        .orElse(Body.ADULT);
  }

  private static Optional<Camera> camera(Value value) {
    List<Located<Integer>> angles = value.list(Spellings.integer(-360, 360));
    if (value.present() && angles.size() != 2) {
      Span at = value.at().orElseThrow();
      value
          .findings()
          .accept(
              Finding.error(
                  "pose-camera",
                  at,
                  "`camera` takes two numbers, yaw and elevation.",
                  "Without both the drawing would be seen from nowhere.",
                  "Write `camera: [14, 7]`, or name a `view`."));
      return Optional.empty();
    }
    return angles.isEmpty()
        ? Optional.empty()
        : Optional.of(new Camera(angles.get(0).value(), angles.get(1).value()));
  }

  private List<KeyFrame> frames(Form form, ContactReader contacts) {
    List<KeyFrame> frames = new ArrayList<>();
    frame(form, "start", "start", contacts).ifPresent(frames::add);
    for (String via : VIAS) {
      String name = "via-" + (VIAS.indexOf(via) + 1);
      frame(form, via, name, contacts).ifPresent(frames::add);
    }
    frame(form, "end", "end", contacts).ifPresent(frames::add);
    if (frames.isEmpty()) {
      return List.of(new KeyFrame("pose", List.of(), List.of()));
    }
    if (frames.size() == 1) {
      alone(form, frames.get(0).name());
    }
    return frames;
  }

  private Optional<KeyFrame> frame(Form form, String key, String name, ContactReader contacts) {
    Value angles = form.optional(key);
    Value touching = form.optional(key + " contacts");
    if (!angles.present() && !touching.present()) {
      return Optional.empty();
    }
    List<TypedAngle> typed = AngleReader.read(angles, complaint);
    return Optional.of(new KeyFrame(name, typed, contacts.read(touching)));
  }

  private void alone(Form form, String only) {
    findings.accept(
        Finding.error(
            "pose-frame-alone",
            form.at(),
            "The movement has a " + only + " and nothing to go to or come from.",
            "A movement is drawn from its start to its end.",
            "Add `start: {…}` and `end: {…}`, or write the angles under `angles` for a still"
                + " pose."));
  }

  private static Map<String, BasePosture> bases() {
    Map<String, BasePosture> words = new LinkedHashMap<>();
    for (BasePosture base : BasePosture.values()) {
      words.put(base.word(), base);
    }
    return words;
  }
}
