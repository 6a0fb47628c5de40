package goniograph.matter;

import goniograph.finding.Edit;
import goniograph.finding.Finding;
import goniograph.finding.MendGrade;
import goniograph.finding.Nearest;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A map read field by field. It notes which keys were asked for; {@link #finish} then gives a
 * finding for every key that nobody asked for, and one for the required keys that are missing.
 */
public final class Form {
  private final Node.Fields fields;
  private final String name;
  private final Consumer<Finding> findings;
  private final Optional<Outline> outline;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> known = new LinkedHashSet<>();
  private final List<String> missing = new ArrayList<>();

  /**
   * A form over a map.
   *
   * @param name what the map is, as in "an unknown key of {name}"
   * @param findings takes what is wrong with it
   */
  public Form(Node.Fields fields, String name, Consumer<Finding> findings) {
    this(fields, name, findings, Optional.empty());
  }

  private Form(
      Node.Fields fields, String name, Consumer<Finding> findings, Optional<Outline> outline) {
    this.fields = fields;
    this.name = name;
    this.findings = findings;
    this.outline = outline;
  }

  /** A form over no file: what its reader asks for is noted, and whatever it gives is empty. */
  public static Form describing(Outline outline) {
    outline.map();
    Node.Fields none = new Node.Fields(List.of(), Span.of(""));
    return new Form(none, "", finding -> {}, Optional.of(outline));
  }

  /** Where the map stands. */
  public Span at() {
    return fields.at();
  }

  /** The value of a key that may be left out. */
  public Value optional(String key) {
    asked.add(key);
    known.add(key);
    return new Value(key, fields.get(key), findings, outline.map(map -> map.key(key)));
  }

  /**
   * The value of a key that must be there.
   *
   * @param example an allowed value, shown to whoever left it out
   */
  public Value required(String key, String example) {
    if (fields.get(key).isEmpty()) {
      missing.add("`" + key + ": " + example + "`");
    }
    outline.ifPresent(map -> map.required(key));
    return optional(key);
  }

  /** Keys that are read elsewhere: they are offered when an unknown key is near to one. */
  public void alsoKnown(Collection<String> keys) {
    known.addAll(keys);
  }

  /** Every field, for maps whose keys are free. */
  public List<Entry> entries() {
    return outline.isPresent()
        ? List.of(any(outline.get().others()))
        : fields.fields().stream().map(this::entry).toList();
  }

  private Entry any(Outline value) {
    return new Entry(
        new Located<>("", at()), new Value("", Optional.empty(), findings, Optional.of(value)));
  }

  private Entry entry(Node.Field field) {
    asked.add(field.key());
    return new Entry(
        new Located<>(field.key(), field.keyAt()),
        new Value(field.key(), Optional.of(field.value()), findings));
  }

  /**
   * Gives the findings about unknown and missing keys; to be called once, at the end. A key that is
   * only misspelt is not missing too.
   */
  public void finish() {
    List<Node.Field> unknown =
        fields.fields().stream().filter(field -> !asked.contains(field.key())).toList();
    unknown.forEach(this::unknown);
    unknown.stream()
        .flatMap(field -> Nearest.of(field.key(), known).stream())
        .forEach(meant -> missing.removeIf(text -> text.startsWith("`" + meant + ":")));
    if (!missing.isEmpty()) {
      findings.accept(
          Finding.error(
              "field-missing",
              start(),
              "Missing in " + name + ": " + String.join(", ", keys()) + ".",
              "Nothing is assumed in its place: what is not written is not known.",
              "Add " + String.join(", ", missing) + " with your own value."));
    }
  }

  private List<String> keys() {
    return missing.stream().map(text -> text.substring(0, text.indexOf(':')) + "`").toList();
  }

  private Span start() {
    Span at = fields.at();
    return new Span(
        at.file(), at.start(), at.start(), at.line(), at.column(), at.line(), at.column());
  }

  private void unknown(Node.Field field) {
    Optional<String> near = Nearest.of(field.key(), known);
    String hint = Nearest.hint(field.key(), known);
    Finding finding =
        Finding.error(
            "field-unknown",
            field.keyAt(),
            "`" + field.key() + "` is not a key of " + name + (hint.isEmpty() ? "." : hint),
            "A key that is not known would be ignored without a word.",
            near.map(key -> "Write `" + key + "`, or take the line out.")
                .orElse("Take the line out. Known here: `" + String.join("`, `", known) + "`."));
    findings.accept(
        near.map(key -> finding.withMend(MendGrade.ASK, List.of(new Edit(field.keyAt(), key))))
            .orElse(finding));
  }

  /** One field of a map with free keys. */
  public record Entry(Located<String> key, Value value) {}
}
