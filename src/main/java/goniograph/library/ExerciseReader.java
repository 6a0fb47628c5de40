package goniograph.library;

import goniograph.dose.Measure;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.dose.Sides;
import goniograph.finding.Finding;
import goniograph.library.Vocabulary.AgeGroup;
import goniograph.library.Vocabulary.Aim;
import goniograph.library.Vocabulary.LiesOn;
import goniograph.library.Vocabulary.Position;
import goniograph.library.Vocabulary.Region;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Shape;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the front matter of an exercise. */
final class ExerciseReader {
  private static final Pattern LIMIT = Pattern.compile("([a-z]+(?: [a-z]+)*) (-?[0-9].*|\\.\\..*)");
  private static final String LIMIT_EXAMPLE = "flexion 85..95 deg";

  private final Consumer<Finding> findings;
  private final PrecautionReader precautions = new PrecautionReader();

  ExerciseReader(Consumer<Finding> findings) {
    this.findings = findings;
  }

  /** The exercise; nothing if one of the fields is unreadable that no exercise can be without. */
  Optional<Exercise> read(Form form, Common common) {
    List<Located<Region>> region =
        form.required("region", "[knee]").list(Spellings.oneOf(Region.class));
    Optional<Located<Aim>> aim = form.required("aim", "strength").as(Spellings.oneOf(Aim.class));
    Optional<Located<Type>> type = form.required("type", "dynamic").as(Spellings.oneOf(Type.class));
    Optional<Located<Position>> position =
        form.required("position", "standing").as(Spellings.oneOf(Position.class));
    Value figure = form.required("figure", common.id().value());
    Optional<Located<Sides>> sides =
        form.required("sides", "{ mode: affected, count: per-side }")
            .form("sides", this::sides)
            .flatMap(read -> read.value().map(given -> new Located<>(given, read.at())));
    Optional<Located<LiesOn>> liesOn = form.optional("lies_on").as(Spellings.oneOf(LiesOn.class));
    position.ifPresent(given -> liesOnSomething(given, form, liesOn.isPresent()));
    LocatedDose dose = dose(form.required("dose", "{ … }"));
    Optional<LocatedLadder> ladder =
        form.optional("ladder")
            .form("ladder", new LadderReader(findings)::read)
            .map(Located::value);
    ladder.ifPresent(given -> notTwice(dose, given));
    Optional<Located<String>> act = form.optional("act").as(Spellings.ID_WORD);
    List<RangeLimit> range = range(form);
    Optional<Located<String>> warmUp = form.optional("warm_up").as(Spellings.ID_WORD);
    Optional<Located<Audience>> audience = audience(form.optional("audience"));
    List<Equipment> equipment =
        form.optional("equipment").list(item -> located(item.form("equipment", this::equipment)));
    List<Precaution> care =
        form.optional("precautions")
            .list(item -> located(item.form("a precaution", precautions::read)));
    Conditions conditions = ConditionsReader.read(form);
    if (aim.isEmpty()
        || type.isEmpty()
        || position.isEmpty()
        || sides.isEmpty()
        || !figure.present()) {
      return Optional.empty();
    }
    return Optional.of(
        new Exercise(
            common,
            region,
            aim.get(),
            type.get(),
            act,
            position.get(),
            liesOn,
            conditions,
            sides.get(),
            range,
            warmUp,
            audience,
            dose,
            ladder,
            equipment,
            care));
  }

  private static <T> Optional<T> located(Optional<Located<Optional<T>>> read) {
    return read.flatMap(Located::value);
  }

  private LocatedDose dose(Value value) {
    List<Node.Field> leaves = value.leaves(DoseReader.SPELLINGS);
    DoseReader reader = new DoseReader(findings);
    reader.unknown(leaves, "`dose`");
    return reader.dose(leaves);
  }

  private void liesOnSomething(Located<Position> position, Form form, boolean given) {
    if (position.value().liesOnSomething() && !given && !form.optional("lies_on").present()) {
      findings.accept(
          Finding.error(
              "lies-on-missing",
              position.at(),
              "Nothing says what carries the body while "
                  + Spellings.word(position.value()).replace('-', ' ')
                  + ".",
              "From the floor one must get up again; from a bed it is easier.",
              "Add `lies_on: bed`, or `floor`, `mat` or `chair`."));
    }
  }

  private void notTwice(LocatedDose dose, LocatedLadder ladder) {
    for (LocatedLadder.LocatedStep step : ladder.steps()) {
      dose.dose()
          .shared(step.changes().dose())
          .forEach(
              field ->
                  findings.accept(
                      Finding.error(
                          "ladder-field-twice",
                          step.changes().at(field).orElse(step.at()),
                          "`"
                              + field.key()
                              + "` stands in `dose` and in step "
                              + step.step().n()
                              + ".",
                          "One number has one home; two would drift apart.",
                          "Keep it in `dose` if it is the same on every step, else in every step"
                              + " alone.")));
    }
  }

  private Optional<Sides> sides(Form form) {
    var mode = form.required("mode", "affected").as(Spellings.oneOf(Sides.Mode.class));
    var count = form.optional("count").as(Spellings.oneOf(Sides.Counting.class));
    var ask = form.optional("ask_at_print").as(Spellings.TRUTH);
    var meaning = form.optional("meaning").as(Spellings.ID_WORD);
    Optional<Sides> sides =
        mode.map(
            given ->
                new Sides(
                    given.value(),
                    count.map(Located::value),
                    ask.map(Located::value).orElse(false),
                    meaning.map(Located::value)));
    sides
        .filter(read -> read.countRequired() && !form.optional("count").present())
        .ifPresent(read -> form.required("count", "per-side"));
    return sides;
  }

  static List<RangeLimit> range(Form form) {
    return form.optional("range")
        .form("range", inner -> inner.entries().stream().flatMap(ExerciseReader::limits).toList())
        .map(Located::value)
        .orElse(List.of());
  }

  private static Stream<RangeLimit> limits(Form.Entry entry) {
    return entry
        .value()
        .<List<Located<Movement>>>either(
            Node.Items.class,
            several -> several.list(MOVEMENT),
            one -> one.as(MOVEMENT).stream().toList())
        .stream()
        .map(
            read -> new RangeLimit(entry.key(), read.value().words(), read.map(Movement::degrees)));
  }

  private record Movement(String words, Range<Quantity> degrees) {}

  private static final Spelling<Movement> MOVEMENT =
      ((Spelling<Movement>) ExerciseReader::movement)
          .shaped(new Shape.Text("[a-z]+( [a-z]+)* " + Measure.ANGLE.rangePattern()));

  private static Optional<Movement> movement(String raw, Spelling.Refusal refusal) {
    Matcher parts = LIMIT.matcher(raw);
    if (!parts.matches()) {
      refusal.because(
          "field-word",
          "`" + raw + "` is not a movement with its limits.",
          "Write for instance `" + LIMIT_EXAMPLE + "`.");
      return Optional.empty();
    }
    return DoseSpellings.amounts(Measure.ANGLE)
        .read(parts.group(2), refusal)
        .map(degrees -> new Movement(parts.group(1), degrees));
  }

  private static Optional<Located<Audience>> audience(Value value) {
    return value.either(
        Node.Fields.class,
        ExerciseReader::child,
        word ->
            word.as(Spellings.oneOf(AgeGroup.class))
                .map(read -> read.map(group -> new Audience(group, Optional.empty()))));
  }

  private static Optional<Located<Audience>> child(Value value) {
    return value
        .form("audience", form -> form.required("child", "9").as(Spellings.integer(0, 17)))
        .flatMap(
            read ->
                read.value()
                    .map(
                        age ->
                            new Located<>(
                                new Audience(AgeGroup.CHILD, Optional.of(age.value())),
                                read.at())));
  }

  private Optional<Equipment> equipment(Form form) {
    var id = form.required("id", "firm-chair").as(Spellings.ID_WORD);
    var instead = form.optional("instead").as(Spellings.ID_WORD);
    var check = form.optional("check").as(Spellings.ID_WORD);
    return id.map(given -> new Equipment(given, instead, check));
  }
}
