package goniograph.pose;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.finding.Nearest;
import goniograph.matter.Node;
import goniograph.matter.YamlReader;
import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Lays a pose over the one that it {@code extends}. Every key is taken over; what the pose types
 * itself wins: of angles movement by movement, of other maps key by key, of all else whole.
 */
final class Inheritance {
  private static final String EXTENDS = "extends";
  private static final String POSE = "pose";
  private static final String WHY = "A pose that is built on another cannot be drawn without it.";

  private final SortedMap<String, SourceFile> figures;
  private final Consumer<Finding> findings;
  private final Map<String, Node.Fields> poses = new LinkedHashMap<>();

  /**
   * For the poses of one file.
   *
   * @param figures all pose files by id
   */
  Inheritance(
      List<Node> documents, SortedMap<String, SourceFile> figures, Consumer<Finding> findings) {
    this.figures = figures;
    this.findings = findings;
    add(documents);
  }

  private void add(List<Node> documents) {
    for (Node document : documents) {
      if (document instanceof Node.Fields fields) {
        word(fields, POSE).ifPresent(id -> poses.putIfAbsent(id.raw(), fields));
      }
    }
  }

  /** The document whole; what it extends and cannot be found is left out after its finding. */
  Node.Fields whole(Node.Fields document) {
    return word(document, EXTENDS)
        .map(extended -> whole(document, extended.at(), List.of()))
        .orElse(document);
  }

  /**
   * @param first the place of the first {@code extends} of the chain: a ring has no other beginning
   */
  private Node.Fields whole(Node.Fields document, Span first, List<String> above) {
    Optional<Node.Scalar> extended = word(document, EXTENDS);
    if (extended.isEmpty()) {
      return document;
    }
    List<String> chain = new ArrayList<>(above);
    word(document, POSE).ifPresent(id -> chain.add(id.raw()));
    return below(extended.get(), first, chain)
        .map(base -> laid(whole(base, first, chain), document))
        .orElse(document);
  }

  private Optional<Node.Fields> below(Node.Scalar extended, Span first, List<String> chain) {
    String id = extended.raw();
    if (chain.contains(id)) {
      say(
          "pose-extends-cycle",
          first,
          "`"
              + String.join("` extends `", chain)
              + "` extends `"
              + id
              + "`: there is no first one.",
          "Take one `extends` out.");
      return Optional.empty();
    }
    Optional<Node.Fields> base = find(id);
    if (base.isEmpty()) {
      unknown(extended);
    }
    return base;
  }

  private Optional<Node.Fields> find(String id) {
    SourceFile file = figures.get(id);
    if (!poses.containsKey(id) && file != null) {
      add(YamlReader.read(file).documents());
    }
    return Optional.ofNullable(poses.get(id));
  }

  private void unknown(Node.Scalar extended) {
    SortedSet<String> known = new TreeSet<>(figures.keySet());
    known.addAll(poses.keySet());
    String hint = Nearest.hint(extended.raw(), known);
    say(
        "pose-extends-unknown",
        extended.at(),
        "There is no pose `" + extended.raw() + "`" + (hint.isEmpty() ? "." : hint),
        Nearest.of(extended.raw(), known)
            .map(near -> "Write `extends: " + near + "`.")
            .orElse("Name a pose of this file or a file in figures/."));
  }

  private void say(String rule, Span at, String what, String mend) {
    findings.accept(Finding.error(rule, at, what, WHY, mend));
  }

  /** The pose files that the poses of a file build on, near and far; the file itself left out. */
  static SortedSet<String> files(SourceFile file, SortedMap<String, SourceFile> figures) {
    SortedSet<String> found = new TreeSet<>();
    collect(file, figures, found);
    figures.forEach(
        (id, one) -> { // a ring leads back
          if (one.path().equals(file.path())) {
            found.remove(id);
          }
        });
    return found;
  }

  private static void collect(
      SourceFile file, SortedMap<String, SourceFile> figures, SortedSet<String> found) {
    for (Node document : YamlReader.read(file).documents()) {
      Optional<Node.Scalar> id =
          document instanceof Node.Fields fields ? word(fields, EXTENDS) : Optional.empty();
      SourceFile next = id.map(one -> figures.get(one.raw())).orElse(null);
      if (next != null && found.add(id.orElseThrow().raw())) {
        collect(next, figures, found);
      }
    }
  }

  private static Optional<Node.Scalar> word(Node.Fields fields, String key) {
    return fields.get(key).filter(Node.Scalar.class::isInstance).map(Node.Scalar.class::cast);
  }

  private static Node.Fields laid(Node.Fields base, Node.Fields own) {
    List<Node.Field> all = new ArrayList<>();
    for (Node.Field field : base.fields()) {
      if (!field.key().equals(EXTENDS) && own.get(field.key()).isEmpty()) {
        all.add(field);
      }
    }
    for (Node.Field field : own.fields()) {
      all.add(
          base.get(field.key())
              .map(below -> new Node.Field(field.key(), field.keyAt(), laid(field, below)))
              .orElse(field));
    }
    return new Node.Fields(all, own.at());
  }

  private static Node laid(Node.Field own, Node below) {
    if (!(own.value() instanceof Node.Fields mine) || !(below instanceof Node.Fields base)) {
      return own.value();
    }
    if (!angles(own.key())) {
      return laid(base, mine);
    }
    List<Node.Field> all = new ArrayList<>(base.fields());
    all.addAll(mine.fields());
    return new Node.Fields(all, mine.at());
  }

  private static boolean angles(String key) {
    return key.equals("angles") || key.equals("wrong") || PoseReader.FRAMES.contains(key);
  }

  /** Findings of a pose's own text; what is wrong with the text it builds on is said there. */
  static Consumer<Finding> own(Node.Fields document, List<Finding> said, List<Finding> others) {
    Span own = document.at();
    return finding -> {
      Span at = finding.at();
      boolean inside =
          at.file().equals(own.file()) && at.start() >= own.start() && at.start() <= own.end();
      (inside ? said : others).add(finding);
    };
  }

  /** What is said of a pose whose base has errors. */
  static Optional<Finding> faulty(Node.Fields document, List<Finding> others) {
    boolean errors = others.stream().anyMatch(finding -> finding.level() == Level.ERROR);
    return word(document, EXTENDS)
        .filter(id -> errors)
        .map(
            id ->
                Finding.error(
                    "pose-extends-faulty",
                    id.at(),
                    "The pose `" + id.raw() + "` that this one extends has errors.",
                    WHY,
                    "Mend `" + id.raw() + "` first."));
  }
}
