package goniograph.matter;

import goniograph.finding.Edit;
import goniograph.finding.Finding;
import goniograph.finding.MendGrade;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The value of a key, or its absence, waiting to be read as one kind of thing. Every reading gives
 * the thing or, where something else stands there, one finding and nothing. An absent or already
 * refused value gives nothing silently.
 *
 * @param key the key it stands behind, for messages
 * @param outline notes what is asked for, where a reader only describes what it takes
 */
public record Value(
    String key, Optional<Node> node, Consumer<Finding> findings, Optional<Outline> outline) {
  private static final String WHY =
      "What cannot be read exactly could reach the patient as something else.";

  /** A value that was read from a file. */
  public Value(String key, Optional<Node> node, Consumer<Finding> findings) {
    this(key, node, findings, Optional.empty());
  }

  /** Whether something stands there, right or wrong. */
  public boolean present() {
    return node.isPresent();
  }

  /** Where it stands. */
  public Optional<Span> at() {
    return node.map(Node::at);
  }

  /** A scalar of this spelling. */
  public <T> Optional<Located<T>> as(Spelling<T> spelling) {
    outline.ifPresent(here -> here.scalar(spelling.shape()));
    return scalar().flatMap(scalar -> spelt(scalar, spelling));
  }

  private <T> Optional<Located<T>> spelt(Node.Scalar scalar, Spelling<T> spelling) {
    return spelling
        .read(
            scalar.raw(),
            (rule, what, mend, grade, better) ->
                refuse(rule, scalar.at(), what, mend, edits(grade, scalar.at(), better), grade))
        .map(value -> new Located<>(value, scalar.at()));
  }

  /** A scalar that is not empty. */
  public Optional<Node.Scalar> scalar() {
    Optional<Node.Scalar> scalar = is(Node.Scalar.class, "one word or number");
    if (scalar.filter(s -> s.raw().isEmpty() && !s.quoted()).isPresent()) {
      refuse(
          "field-empty",
          scalar.get().at(),
          "`" + key + "` has no value.",
          "Write a value behind the colon, or take the line out.");
      return Optional.empty();
    }
    return scalar;
  }

  /** A list, each item read by {@code item}; what could not be read is left out. */
  public <T> List<T> list(Function<Value, Optional<T>> item) {
    List<T> read = new ArrayList<>();
    outline
        .map(here -> new Value(key, node, findings, Optional.of(here.items())))
        .flatMap(item)
        .ifPresent(read::add);
    for (Node node : is(Node.Items.class, "a list").map(Node.Items::items).orElse(List.of())) {
      item.apply(new Value(key, Optional.of(node), findings)).ifPresent(read::add);
    }
    return List.copyOf(read);
  }

  /** A list of scalars of this spelling. */
  public <T> List<Located<T>> list(Spelling<T> spelling) {
    return list(value -> value.as(spelling));
  }

  /** A map as it stands. */
  public Optional<Node.Fields> fields() {
    return is(Node.Fields.class, "a map");
  }

  /**
   * The leaves of a map under their dotted keys, in the order of the file; keys that are not known
   * come too.
   *
   * @param known how the known leaves are spelt
   */
  public List<Node.Field> leaves(Map<String, ? extends Spelling<?>> known) {
    outline.ifPresent(here -> here.dotted(known));
    return fields().map(Dotted::leaves).orElse(List.of());
  }

  /** Read in one way where a node of this kind stands, in the other way where not. */
  public <T> T either(
      Class<? extends Node> kind, Function<Value, T> reader, Function<Value, T> otherwise) {
    if (outline.isPresent()) {
      return Stream.of(reader, otherwise).map(one -> one.apply(this)).toList().get(1);
    }
    return node.filter(kind::isInstance).isPresent() ? reader.apply(this) : otherwise.apply(this);
  }

  /** A map, to be read field by field and then finished. */
  public Optional<Form> form(String name) {
    return changed(name, fields -> fields);
  }

  /** A map as {@code change} gives it, to be read field by field and then finished. */
  public Optional<Form> changed(String name, UnaryOperator<Node.Fields> change) {
    return outline
        .map(Form::describing)
        .or(() -> fields().map(fields -> new Form(change.apply(fields), name, findings)));
  }

  /** A map read by {@code reader} and finished; nothing where no map stands. */
  public <T> Optional<Located<T>> form(String name, Function<Form, T> reader) {
    return form(name)
        .map(
            form -> {
              T read = reader.apply(form);
              form.finish();
              return new Located<>(read, form.at());
            });
  }

  private <N extends Node> Optional<N> is(Class<N> kind, String name) {
    Optional<N> found = node.filter(kind::isInstance).map(kind::cast);
    if (found.isEmpty()) {
      node.filter(other -> !(other instanceof Node.Refused))
          .ifPresent(other -> wrongKind(other, name));
    }
    return found;
  }

  private void wrongKind(Node other, String wanted) {
    String typed = other instanceof Node.Scalar scalar ? scalar.raw() : "";
    if (typed.isEmpty() && other instanceof Node.Scalar) {
      refuse("field-empty", other.at(), "`" + key + "` has no value.", example(wanted, "…"));
      return;
    }
    refuse(
        "field-kind",
        other.at(),
        "`" + key + "` takes " + wanted + ", not " + kind(other) + ".",
        example(wanted, typed.isEmpty() ? "…" : typed));
  }

  private String example(String wanted, String typed) {
    return switch (wanted) {
      case "a list" -> "Write `" + key + ": [" + typed + "]`.";
      case "a map" -> "Write `" + key + ": { … }`.";
      default -> "Write `" + key + ": …`, without brackets.";
    };
  }

  private static String kind(Node node) {
    return node instanceof Node.Items
        ? "a list"
        : node instanceof Node.Fields ? "a map" : "one word or number";
  }

  private static List<Edit> edits(MendGrade grade, Span at, String better) {
    return grade == MendGrade.SHOW ? List.of() : List.of(new Edit(at, better));
  }

  private void refuse(String rule, Span at, String what, String mend) {
    refuse(rule, at, what, mend, List.of(), MendGrade.SHOW);
  }

  private void refuse(
      String rule, Span at, String what, String mend, List<Edit> edits, MendGrade grade) {
    findings.accept(Finding.error(rule, at, what, WHY, mend).withMend(grade, edits));
  }
}
