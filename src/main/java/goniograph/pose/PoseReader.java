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
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.function.Consumer;

/**
 * Reads pose files. What is not understood gives a finding at its exact place and is left out, so
 * that the rest can be drawn while an author is still typing.
 */
public final class PoseReader {
  private static final FieldWords WORDS = new FieldWords(PoseReader.class, "fields.properties");
  private static final List<String> VIAS = List.of("via", "via 2", "via 3", "via 4", "via 5");

  /** The keys of key frames, in the order of the movement. */
  static final List<String> FRAMES = frameKeys();

  private final Complaint complaint;
  private final Consumer<Finding> findings;

  private PoseReader(Consumer<Finding> findings) {
    this.findings = findings;
    this.complaint = new Complaint(findings);
  }

  /** The poses of a file that stands alone, one a document. */
  public static List<PoseFile> read(SourceFile file, Consumer<Finding> findings) {
    return read(file, Collections.emptySortedMap(), findings);
  }

  /**
   * The poses of a file, one a document; one without an id or a base posture is left out.
   *
   * @param figures the pose files by id, on which poses may build
   */
  public static List<PoseFile> read(
      SourceFile file, SortedMap<String, SourceFile> figures, Consumer<Finding> findings) {
    Yaml yaml = YamlReader.read(file);
    yaml.findings().forEach(findings);
    Inheritance inheritance = new Inheritance(yaml.documents(), figures, findings);
    return yaml.documents().stream()
        .flatMap(document -> read(document, inheritance, findings).stream())
        .toList();
  }

  /** The ids of the pose files on which the poses of a file build. */
  public static SortedSet<String> extended(SourceFile file, SortedMap<String, SourceFile> figures) {
    return Inheritance.files(file, figures);
  }

  private static Optional<PoseFile> read(
      Node document, Inheritance inheritance, Consumer<Finding> findings) {
    if (!(document instanceof Node.Fields own)) {
      return whole(document, findings);
    }
    List<Finding> said = new ArrayList<>();
    List<Finding> others = new ArrayList<>();
    Optional<PoseFile> pose = whole(inheritance.whole(own), Inheritance.own(own, said, others));
    said.forEach(findings);
    Inheritance.faulty(own, others).ifPresent(findings);
    return pose;
  }

  private static Optional<PoseFile> whole(Node document, Consumer<Finding> findings) {
    Consumer<Finding> told =
        document instanceof Node.Fields fields
            ? WORDS.explaining(fields, path -> true, findings)
            : findings;
    return new Value("pose", Optional.of(document), told)
        .form("the pose file", form -> new PoseReader(told).pose(form))
        .flatMap(Located::value);
  }

  private static List<String> frameKeys() {
    List<String> keys = new ArrayList<>(List.of("start"));
    keys.addAll(VIAS);
    keys.add("end");
    return List.copyOf(keys);
  }

  private Optional<PoseFile> pose(Form form) {
    form.optional("extends");
    boolean mirrored =
        form.optional("mirror").as(Spellings.TRUTH).map(Located::value).orElse(false);
    Optional<Located<String>> id = form.required("pose", "my-pose").as(Spellings.ID_WORD);
    Optional<BasePosture> base =
        form.required("base", "standing").as(Spellings.oneOf(bases())).map(Located::value);
    Optional<PoseFile> pose = id.flatMap(name -> base.map(posture -> pose(name, posture, form)));
    if (pose.isEmpty()) { // read on, so that the rest of the file is judged too
      pose(new Located<>("", form.at()), BasePosture.STANDING, form);
    }
    return mirrored ? pose.map(PoseFile::mirrored) : pose;
  }

  private PoseFile pose(Located<String> id, BasePosture base, Form form) {
    List<SupportWish> supports = SupportReader.supports(form.optional("supports"), complaint);
    List<PropWish> props = PropReader.read(form.optional("props"));
    ContactReader contacts = new ContactReader(targets(supports, props), complaint);
    TypedAngles typed =
        AngleReader.read(form.optional("angles"), supportWords(supports), complaint);
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
        typed.angles(),
        typed.wishes(),
        frames(form, supportWords(supports), contacts),
        Marks.moving(form.optional("moving"), complaint),
        Marks.marks(form.optional("marks"), complaint),
        form.optional("focus").as(Spellings.oneOf(Focus.words())).map(Located::value),
        frame(form, "wrong", "wrong", supportWords(supports), contacts),
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

  private static List<String> supportWords(List<SupportWish> supports) {
    return supports.stream().map(support -> support.kind().word()).distinct().toList();
  }

  private List<KeyFrame> frames(Form form, List<String> things, ContactReader contacts) {
    List<KeyFrame> frames = new ArrayList<>();
    for (String key : FRAMES) {
      String name = VIAS.contains(key) ? "via-" + (VIAS.indexOf(key) + 1) : key;
      frame(form, key, name, things, contacts).ifPresent(frames::add);
    }
    if (frames.isEmpty()) {
      return List.of(new KeyFrame("pose", TypedAngles.NONE, List.of()));
    }
    if (frames.size() == 1) {
      alone(form, frames.get(0).name());
    }
    return frames;
  }

  private Optional<KeyFrame> frame(
      Form form, String key, String name, List<String> things, ContactReader contacts) {
    Value angles = form.optional(key);
    Value touching = form.optional(key + " contacts");
    if (!angles.present() && !touching.present()) {
      return Optional.empty();
    }
    TypedAngles typed = AngleReader.read(angles, things, complaint);
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
