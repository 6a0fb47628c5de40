package goniograph.exchange;

import goniograph.library.FieldGuide;
import goniograph.library.Kind;
import goniograph.matter.Shape;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The front matter of every kind of entry as JSON Schema, draft 2020-12, for editors that offer
 * keys and words while one types. It is made from what the readers ask for. What one field asks of
 * another, and what the rules ask, only {@code check} knows.
 */
public final class FrontMatterSchema {
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

  private FrontMatterSchema() {}

  /** The schema, ending with a line feed. */
  public static String of() {
    ObjectNode root = JsonMapper.shared().createObjectNode();
    root.put("$schema", DIALECT);
    root.put("title", "Front matter of a Goniograph entry");
    root.put("type", "object");
    root.putArray("required").add("kind");
    ArrayNode kinds = root.putObject("properties").putObject("kind").putArray("enum");
    ArrayNode byKind = root.putArray("allOf");
    ObjectNode shapes = root.putObject("$defs");
    for (Kind kind : Kind.values()) {
      kinds.add(kind.word());
      ObjectNode choice = byKind.addObject();
      ObjectNode when = choice.putObject("if");
      when.putArray("required").add("kind");
      when.putObject("properties").putObject("kind").put("const", kind.word());
      choice.putObject("then").put("$ref", "#/$defs/" + kind.word());
      put(shapes.putObject(kind.word()), FieldGuide.of(kind).shape(), "");
    }
    return Json.text(root);
  }

  private static void put(ObjectNode node, Shape shape, String path) {
    if (shape instanceof Shape.Words words) {
      ArrayNode allowed = node.putArray("enum");
      words.words().forEach(allowed::add);
    } else if (shape instanceof Shape.Truth) {
      node.put("type", "boolean");
    } else if (shape instanceof Shape.Whole whole) {
      node.put("type", "integer").put("minimum", whole.least()).put("maximum", whole.most());
    } else if (shape instanceof Shape.Text text) {
      node.put("type", "string");
      if (!text.pattern().isEmpty()) {
        node.put("pattern", "^(?:" + text.pattern() + ")$");
      }
    } else if (shape instanceof Shape.Day) {
      node.put("type", "string").put("format", "date");
      node.put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
    } else if (shape instanceof Shape.Items list) {
      node.put("type", "array");
      put(node.putObject("items"), list.item(), path);
    } else if (shape instanceof Shape.AnyOf any) {
      ArrayNode choices = node.putArray("anyOf");
      any.shapes().forEach(one -> put(choices.addObject(), one, path));
    } else if (shape instanceof Shape.Fields map) {
      put(node, map, path);
    }
  }

  private static void put(ObjectNode node, Shape.Fields map, String path) {
    node.put("type", "object");
    List<String> required =
        map.fields().stream().filter(Shape.Field::required).map(Shape.Field::key).toList();
    if (!required.isEmpty()) {
      ArrayNode names = node.putArray("required");
      required.forEach(names::add);
    }
    ObjectNode properties = node.putObject("properties");
    map.fields().forEach(field -> field(properties, field.key(), field.shape(), path));
    if (map.dotted()) {
      map.fields().forEach(field -> dotted(node, properties, field, path));
    }
    if (map.others().isPresent()) {
      put(node.putObject("additionalProperties"), map.others().get(), path);
    } else {
      node.put("additionalProperties", false);
    }
  }

  private static void dotted(
      ObjectNode node, ObjectNode properties, Shape.Field field, String path) {
    if (field.shape() instanceof Shape.Fields inner) {
      inner
          .fields()
          .forEach(leaf -> field(properties, field.key() + "." + leaf.key(), leaf.shape(), path));
      inner
          .others()
          .ifPresent(
              shape ->
                  put(
                      node.withObject("/patternProperties").putObject("^" + field.key() + "\\."),
                      shape,
                      ""));
    }
  }

  private static void field(ObjectNode properties, String key, Shape shape, String path) {
    String whole = path.isEmpty() ? key : path + "." + key;
    ObjectNode node = properties.putObject(key);
    String purpose = FieldGuide.purpose(whole);
    if (!purpose.isEmpty()) {
      node.put("description", purpose);
    }
    put(node, shape, whole);
  }
}
