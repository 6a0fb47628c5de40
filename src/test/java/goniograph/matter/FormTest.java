package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Finding;
import goniograph.source.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FormTest {
  private final List<Finding> findings = new ArrayList<>();

  private enum Stance {
    WIDE,
    ONE_LEG
  }

  @Test
  void readsEachKindOfValueWithItsPlace() {
    Form form = form("id: hp-chair-rise\nn: 4\nask: true\ndue: 2027-05-31\nstance: one-leg\n");
    assertEquals("hp-chair-rise", form.optional("id").as(Spellings.ID_WORD).get().value());
    assertEquals(4, form.optional("n").as(Spellings.integer(1, 9)).get().value());
    assertEquals(true, form.optional("ask").as(Spellings.TRUTH).get().value());
    assertEquals(LocalDate.of(2027, 5, 31), form.optional("due").as(Spellings.DAY).get().value());
    Located<Stance> stance =
        form.optional("stance").as(Spellings.oneOf(Stance.class)).orElseThrow();
    assertEquals(Stance.ONE_LEG, stance.value());
    assertEquals(5, stance.at().line());
    assertEquals(9, stance.at().column());
    form.finish();
    assertEquals(List.of(), findings);
  }

  @Test
  void anUnknownKeyIsAnErrorWithTheNearestKnown() {
    Form form = form("postion: standing\nheight: 3\n");
    form.optional("position");
    form.finish();
    assertFound("1:1 field-unknown `postion` is not a key of the entry; did you mean `position`?");
    assertFound("2:1 field-unknown `height` is not a key of the entry.");
  }

  @Test
  void missingKeysAreOneFindingWithExamples() {
    Form form = form("id: x\n");
    form.optional("id");
    form.required("aim", "strength");
    form.required("figure", "hp-chair-rise");
    form.finish();
    assertFound("1:1 field-missing Missing in the entry: `aim`, `figure`.");
    assertEquals(
        "Add `aim: strength`, `figure: hp-chair-rise` with your own value.",
        findings.get(0).mend());
  }

  @Test
  void theWrongKindSaysWhichIsWanted() {
    form("region: knee\n").optional("region").list(Spellings.TEXT);
    assertFound("1:9 field-kind `region` takes a list, not one word or number.");
    assertEquals("Write `region: [knee]`.", findings.get(0).mend());
    form("aim: [strength]\n").optional("aim").as(Spellings.TEXT);
    assertFound("1:6 field-kind `aim` takes one word or number, not a list.");
    form("pain: 3\n").optional("pain").form("pain");
    assertFound("1:7 field-kind `pain` takes a map, not one word or number.");
  }

  @Test
  void anEmptyValueIsFoundWhateverWasWanted() {
    assertTrue(form("aim:\n").optional("aim").as(Spellings.TEXT).isEmpty());
    assertFound("1:5 field-empty `aim` has no value.");
    form("region:\n").optional("region").list(Spellings.TEXT);
    assertFound("1:8 field-empty `region` has no value.");
  }

  @Test
  void aWordOutsideTheVocabularyIsFoundWithTheNearest() {
    form("stance: oneleg\n").optional("stance").as(Spellings.oneOf(Stance.class));
    assertFound("1:9 field-word `oneleg` is not one of the allowed words; did you mean `one-leg`?");
    assertEquals("Write one of `one-leg`, `wide`.", findings.get(0).mend());
  }

  @Test
  void numbersTruthsDatesAndIdsAreRefusedInAnySpellingButTheirOwn() {
    for (String typed : List.of("010", "3.0", "+3", "three", "1_0", "0x3", "99")) {
      form("n: " + typed + "\n").optional("n").as(Spellings.integer(1, 9));
      assertEquals("field-integer", only().rule(), typed);
    }
    for (String typed : List.of("True", "TRUE", "1", "null")) {
      form("n: " + typed + "\n").optional("n").as(Spellings.TRUTH);
      assertEquals("field-word", only().rule(), typed);
    }
    for (String typed : List.of("31.05.2027", "2027-02-30", "2027-5-31", "27-05-31")) {
      form("n: " + typed + "\n").optional("n").as(Spellings.DAY);
      assertEquals("field-date", only().rule(), typed);
    }
    for (String typed : List.of("Kitchen Counter", "kitchen_counter", "-a", "a--b")) {
      form("n: " + typed + "\n").optional("n").as(Spellings.ID_WORD);
      assertEquals("field-id", only().rule(), typed);
    }
  }

  @Test
  void aRefusedValueIsSilentAndNotMissing() {
    Form form = form("override: no\n");
    assertEquals("yaml-yes-no", only().rule());
    findings.clear();
    assertEquals(Optional.empty(), form.required("override", "false").as(Spellings.TRUTH));
    form.finish();
    assertEquals(List.of(), findings);
  }

  @Test
  void dottedKeysAreNestedMaps() {
    Node.Fields fields = fields("load: { kind: band }\nload.band: band-light\nsets: 2\n");
    List<Node.Field> leaves = Dotted.leaves(fields);
    assertEquals(
        List.of("load.kind", "load.band", "sets"), leaves.stream().map(Node.Field::key).toList());
    Node.Fields nested = Dotted.nested(leaves, fields.at());
    assertEquals(List.of("load", "sets"), nested.fields().stream().map(Node.Field::key).toList());
    assertEquals(
        List.of("kind", "band"),
        ((Node.Fields) nested.get("load").orElseThrow())
            .fields().stream().map(Node.Field::key).toList());
  }

  @Test
  void slotsOfAScalarHaveTheirOwnPlace() {
    Node.Scalar text =
        (Node.Scalar) fields("a: \"حتى {pain.during_max} من\"\n").get("a").orElseThrow();
    Inline.Slot slot = Slots.in(new Located<>(text.raw(), text.at())).get(0);
    assertEquals("pain.during_max", slot.name());
    assertEquals(9, slot.at().column());
    assertEquals(11, slot.at().start());
  }

  private Form form(String yaml) {
    findings.clear();
    return new Form(fields(yaml), "the entry", findings::add);
  }

  private Node.Fields fields(String yaml) {
    Yaml read = YamlReader.read(SourceFile.of("en.md", yaml));
    findings.addAll(read.findings());
    return (Node.Fields) read.root().orElseThrow();
  }

  private Finding only() {
    assertEquals(1, findings.size());
    return findings.get(0);
  }

  private void assertFound(String expected) {
    List<String> found =
        findings.stream()
            .map(f -> f.at().line() + ":" + f.at().column() + " " + f.rule() + " " + f.what())
            .toList();
    assertTrue(found.contains(expected), () -> expected + "\n" + found);
  }
}
