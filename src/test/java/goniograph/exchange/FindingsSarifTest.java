package goniograph.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import goniograph.check.rules.RuleBook;
import goniograph.finding.Edit;
import goniograph.finding.Finding;
import goniograph.finding.MendGrade;
import goniograph.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Against the schema that OASIS publishes with SARIF 2.1.0. */
class FindingsSarifTest {
  private static final SourceFile FILE =
      SourceFile.of("content/exercises/übung eins/en.md", "hold: 10 sec\n");
  private static final Finding UNIT =
      Finding.error(
              "quantity-unit",
              FILE.span(6, 12),
              "`sec` is not a unit of time.",
              "Another unit is another dose.",
              "Write `10 s`.")
          .withEntry("uebung-eins")
          .withBecause("hold")
          .withMend(MendGrade.SAFE, List.of(new Edit(FILE.span(9, 12), "s")));

  private static String sarif(Finding... findings) {
    return FindingsSarif.of(
        new FindingsReport(LocalDate.of(2026, 11, 25), "library", 1, List.of(findings)),
        RuleBook.rules());
  }

  private static Schema published() throws IOException {
    try (InputStream schema =
        FindingsSarifTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      assertNotNull(schema);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(schema);
    }
  }

  @Test
  void validAgainstThePublishedSchema() throws IOException {
    assertEquals(List.of(), published().validate(sarif(UNIT), InputFormat.JSON));
    assertEquals(List.of(), published().validate(sarif(), InputFormat.JSON));
  }

  @Test
  void theSchemaIsRead() throws IOException {
    String wrong = sarif(UNIT).replace("\"startLine\" : 1", "\"startLine\" : 0");
    assertEquals(1, published().validate(wrong, InputFormat.JSON).size());
  }

  @Test
  void namesThePlaceTheRuleAndTheFix() {
    JsonNode run = JsonMapper.shared().readTree(sarif(UNIT)).get("runs").get(0);
    JsonNode result = run.get("results").get(0);
    JsonNode place = result.get("locations").get(0).get("physicalLocation");
    assertEquals(
        "content/exercises/%C3%BCbung%20eins/en.md",
        place.get("artifactLocation").get("uri").asString());
    assertEquals(7, place.get("region").get("startColumn").asInt());
    assertEquals(
        result.get("ruleId").asString(),
        run.get("tool")
            .get("driver")
            .get("rules")
            .get(result.get("ruleIndex").asInt())
            .get("id")
            .asString());
    JsonNode change =
        result.get("fixes").get(0).get("artifactChanges").get(0).get("replacements").get(0);
    assertEquals(9, change.get("deletedRegion").get("byteOffset").asInt());
    assertEquals("s", change.get("insertedContent").get("text").asString());
  }
}
