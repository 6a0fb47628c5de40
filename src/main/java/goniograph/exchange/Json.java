package goniograph.exchange;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON as this program writes it: indented, with the same bytes on every system. */
final class Json {
  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");
  private static final DefaultPrettyPrinter PRINTER =
      new DefaultPrettyPrinter().withObjectIndenter(INDENTER).withArrayIndenter(INDENTER);

  private Json() {}

  static String text(JsonNode node) {
    return JsonMapper.shared().writer().with(PRINTER).writeValueAsString(node) + "\n";
  }
}
