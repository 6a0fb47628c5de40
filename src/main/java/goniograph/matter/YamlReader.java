package goniograph.matter;

import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads YAML 1.2 as trees with exact places. Scalars are kept as typed: what {@code 010} or {@code
 * 1:30} may mean is judged by whoever knows the field. Anchors, aliases, tags, keys that stand
 * twice and the bare words yes, no, on, off, y and n are refused.
 */
public final class YamlReader {
  private static final Set<String> TRUTH_WORDS = Set.of("yes", "no", "on", "off", "y", "n");

  private final Slice slice;
  private final YamlFindings findings;
  private final YAMLParser parser;

  private YamlReader(Slice slice) {
    this.slice = slice;
    this.findings = new YamlFindings(slice);
    this.parser =
        (YAMLParser)
            YAMLFactory.builder()
                .build()
                .createParser(ObjectReadContext.empty(), new WholeCharacters(slice.text()));
  }

  /** Reads a whole file, which may hold several documents. */
  public static Yaml read(SourceFile file) {
    return read(file, 0, file.text().length());
  }

  /** Reads the characters {@code from} to before {@code to}; places are those of the whole file. */
  public static Yaml read(SourceFile file, int from, int to) {
    YamlReader reader = new YamlReader(new Slice(file, from, to));
    List<Node> documents = new ArrayList<>();
    reader.documents(documents);
    return new Yaml(documents, reader.findings.whole(), reader.findings.all());
  }

  private void documents(List<Node> into) {
    findings.characters();
    JsonToken token = next();
    while (token != null) {
      into.add(value(token));
      token = next();
    }
  }

  /** The next token, or null at the end or behind a fault of the text. */
  private @Nullable JsonToken next() {
    if (!findings.whole()) {
      return null;
    }
    try {
      return parser.nextToken();
    } catch (JacksonException fault) {
      findings.fault(fault, start());
      return null;
    }
  }

  private Node value(JsonToken token) {
    long start = start();
    Optional<Node> refused = decorated(start);
    Node read =
        switch (token) {
          case START_OBJECT -> fields(start);
          case START_ARRAY -> items(start);
          default -> scalar(start);
        };
    return refused.orElse(read);
  }

  /** The finding about an anchor, an alias or a tag that stands where a value starts. */
  private Optional<Node> decorated(long start) {
    String found = slice.cut(start, end());
    return switch (found.isEmpty() ? ' ' : found.charAt(0)) {
      case '&', '*', '!' -> {
        Span at = slice.span(start, start + word(start));
        findings.decoration(found.charAt(0), at, slice.cut(start, start + word(start)));
        yield Optional.of(new Node.Refused(found, at));
      }
      default -> Optional.empty();
    };
  }

  private long word(long start) {
    String rest = slice.text().substring(slice.index(start));
    return rest.codePoints().takeWhile(c -> c > ' ' && "[]{},".indexOf(c) < 0).count();
  }

  private Node scalar(long start) {
    String typed = slice.cut(start, end());
    boolean quoted = !typed.isEmpty() && "'\"|>".indexOf(typed.charAt(0)) >= 0;
    String raw = quoted || typed.contains("\n") ? text() : typed;
    Span at = slice.span(start, end());
    if (!quoted && TRUTH_WORDS.contains(raw.toLowerCase(Locale.ROOT))) {
      findings.truthWord(raw, at);
      return new Node.Refused(raw, at);
    }
    return new Node.Scalar(raw, quoted, at);
  }

  private String text() {
    String text = parser.getString();
    return text == null ? "" : text;
  }

  private Node items(long start) {
    boolean flow = slice.cut(start, end()).endsWith("[");
    Span last = slice.span(start, end());
    Span at = last;
    List<Node> items = new ArrayList<>();
    JsonToken token = next();
    while (token != null && token != JsonToken.END_ARRAY) {
      Node item = value(token);
      items.add(item);
      last = item.at();
      token = next();
    }
    return new Node.Items(items, at.to(closed(token, flow, last)));
  }

  private Node fields(long start) {
    boolean flow = slice.cut(start, end()).endsWith("{");
    Span last = slice.span(start, end());
    Span at = last;
    Map<String, Node.Field> fields = new LinkedHashMap<>();
    JsonToken token = next();
    while (token == JsonToken.PROPERTY_NAME) {
      Node.Field field = field();
      Node.Field first = fields.putIfAbsent(field.key(), field);
      if (first != null) {
        findings.twice(field, first);
      }
      last = field.value().at();
      token = next();
    }
    return new Node.Fields(List.copyOf(fields.values()), at.to(closed(token, flow, last)));
  }

  private Node.Field field() {
    Span keyAt = slice.span(start(), end());
    decorated(start());
    String key = parser.currentName();
    JsonToken token = next();
    Node value = token == null ? new Node.Refused("", keyAt) : value(token);
    return new Node.Field(key, keyAt, value);
  }

  /** A flow collection ends with its bracket, a block collection with its last value. */
  private Span closed(@Nullable JsonToken token, boolean flow, Span last) {
    return token != null && flow ? slice.span(start(), end()) : last;
  }

  private long start() {
    return parser.currentTokenLocation().getCharOffset();
  }

  private long end() {
    return parser.currentLocation().getCharOffset();
  }
}
