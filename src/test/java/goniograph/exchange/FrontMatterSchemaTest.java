package goniograph.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import goniograph.library.Library;
import goniograph.matter.EntryFile;
import goniograph.matter.Node;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Held by a JSON Schema validator that this project did not write, against the reader's word. */
class FrontMatterSchemaTest {
  private static final String CHAIR_RISE = "content/exercises/hp-chair-rise/en.md";
  private static final Files DEMO = DiskFiles.at(Path.of("."));
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(FrontMatterSchema.of());

  private static List<String> faults(String text) {
    EntryFile file = EntryFile.read(SourceFile.of("en.md", text));
    JsonNode json = json(file.frontMatter().orElseThrow().root().orElseThrow());
    return SCHEMA.validate(json.toString(), InputFormat.JSON).stream()
        .map(Object::toString)
        .toList();
  }

  /** As a reader of the YAML 1.2 core schema types it. */
  private static JsonNode json(Node node) {
    JsonMapper mapper = JsonMapper.shared();
    if (node instanceof Node.Fields map) {
      ObjectNode object = mapper.createObjectNode();
      map.fields().forEach(field -> object.set(field.key(), json(field.value())));
      return object;
    } else if (node instanceof Node.Items list) {
      ArrayNode array = mapper.createArrayNode();
      list.items().forEach(item -> array.add(json(item)));
      return array;
    }
    if (node instanceof Node.Refused refused) {
      return mapper.valueToTree(refused.raw());
    }
    Node.Scalar scalar = (Node.Scalar) node;
    boolean typed = !scalar.quoted() && scalar.raw().matches("-?[0-9]+(\\.[0-9]+)?|true|false");
    return typed ? mapper.readTree(scalar.raw()) : mapper.valueToTree(scalar.raw());
  }

  private static String chairRise() {
    return DEMO.text(CHAIR_RISE).orElseThrow().text();
  }

  private static boolean readerRefuses(String text) {
    MemoryFiles files = new MemoryFiles();
    files.with(CHAIR_RISE, text);
    return Library.read(files).findings().stream()
        .anyMatch(finding -> finding.at().file().equals(CHAIR_RISE));
  }

  @Test
  void everyEntryOfTheDemoIsValid() {
    List<String> entries =
        List.of("content/exercises", "content/advice", "content/programmes").stream()
            .flatMap(folder -> DEMO.list(folder).stream())
            .filter(path -> path.endsWith("/en.md"))
            .toList();
    assertTrue(entries.size() >= 4, entries.toString());
    for (String path : entries) {
      assertEquals(List.of(), faults(DEMO.text(path).orElseThrow().text()), path);
    }
    assertFalse(readerRefuses(chairRise()));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a key that is not known    | feet: shoes               | foot: shoes
          no schema                  | schema: entry/1           |
          a key misspelt             | aim: strength             | aims: strength
          a word of no list          | aim: strength             | aim: power
          a number for a word        | aim: strength             | aim: 3
          a list for a word          | aim: strength             | aim: [strength]
          a word for a list          | region: [hip]             | region: hip
          a wrong word in a list     | region: [hip]             | region: [leg]
          a required key left out    | position: sitting         |
          a required key of a part   | { mode: both-together }   | { ask_at_print: true }
          a quantity without unit    | rest: 60 s                | rest: 60
          a unit of something else   | rest: 60 s                | rest: 60 kg
          no space before the unit   | lift: 2 s                 | lift: 2s
          a comma for a point        | 55.. cm                   | 55,5.. cm
          a count out of bounds      | days_per_week: 5          | days_per_week: 8
          a count with a unit        | reps: 10,                 | reps: 10 s,
          a step without its number  | n: 2, sets                | sets
          a key no step has          | n: 2, sets                | n: 2, colour: red, sets
          a criterion in the wrong place | all_reps_done_days: 3 | near_fall: 1
          yes for true               | override: false           | override: no
          no date                    | review_due: 2027-05-31    | review_due: May 2027
          a text for a map           | support: { need: none-needed } | support: counter
          an evidence without source | , ref: who-2020           | ,
          no movement                | knee: flexion -5..110 deg | knee: -5..110 deg
          free text                  | act: stand-up             | act: Stand up slowly
          """)
  void schemaAndReaderRefuseTheSame(String what, String right, String wrong) {
    String good = chairRise();
    assertTrue(good.contains(right), right);
    String bad = good.replace(right, wrong == null ? "" : wrong);
    assertFalse(faults(bad).isEmpty(), "the schema lets pass " + what);
    assertTrue(readerRefuses(bad), "the reader lets pass " + what);
  }

  @Test
  void aPointInAKeySaysTheSame() {
    String dotted =
        chairRise().replace("seat_height: 42 cm", "seat_height: 42 cm, load.mass: 2 kg");
    assertEquals(List.of(), faults(dotted));
    assertFalse(faults(dotted.replace("load.mass", "load.weight")).isEmpty());
  }

  @Test
  void everyKeyIsExplained() {
    JsonNode defs = JsonMapper.shared().readTree(FrontMatterSchema.of()).get("$defs");
    JsonNode exercise = defs.get("exercise").get("properties");
    for (String key : exercise.propertyNames()) {
      assertTrue(exercise.get(key).has("description"), key + " is not explained");
    }
    JsonNode dose = exercise.get("dose").get("properties").get("tempo").get("properties");
    assertEquals("How long the way back takes.", dose.get("lower").get("description").asString());
  }
}
