package goniograph.register;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.function.Function;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLWriteFeature;

/**
 * Writes register files as plain YAML, one value a line and keys in a fixed order, so that two
 * versions compare well. The same register gives the same bytes.
 */
public final class RegisterWriter {
  private static final String NOTE = "# Written by `goniograph register`. Do not edit by hand.\n";
  private static final YAMLMapper YAML =
      YAMLMapper.builder()
          .disable(YAMLWriteFeature.WRITE_DOC_START_MARKER, YAMLWriteFeature.SPLIT_LINES)
          .enable(YAMLWriteFeature.MINIMIZE_QUOTES)
          .enable(YAMLWriteFeature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
          .enable(YAMLWriteFeature.INDENT_ARRAYS_WITH_INDICATOR)
          .build();

  private RegisterWriter() {}

  /** The bytes of an entry's register file. */
  public static byte[] bytes(EntryRegister register) {
    Map<String, Object> file = file();
    some(file, "entry", signatures(register.entry()));
    some(file, "versions", map(register.versions(), RegisterWriter::signatures));
    some(file, "pieces", map(register.pieces(), RegisterWriter::pieces));
    some(file, "accepted", register.accepted().stream().map(RegisterWriter::accepted).toList());
    return bytes(file);
  }

  /** The bytes of the shared register file. */
  public static byte[] bytes(SharedRegister register) {
    Map<String, Object> file = file();
    some(file, "rules", map(register.rules(), RegisterWriter::signatures));
    some(
        file,
        "statements",
        map(register.statements(), ids -> map(ids, RegisterWriter::signatures)));
    some(file, "phrases", map(register.phrases(), RegisterWriter::signatures));
    some(file, "recalls", register.recalls().stream().map(RegisterWriter::recall).toList());
    some(file, "releases", register.releases().stream().map(RegisterWriter::release).toList());
    return bytes(file);
  }

  static byte[] bytes(Map<String, Object> file) {
    return (NOTE + YAML.writeValueAsString(file)).getBytes(StandardCharsets.UTF_8);
  }

  private static Map<String, Object> file() {
    Map<String, Object> file = new LinkedHashMap<>();
    file.put("schema", RegisterReader.SCHEMA);
    return file;
  }

  private static List<Object> signatures(Signatures signatures) {
    return signatures.all().stream().map(RegisterWriter::signature).toList();
  }

  private static Object signature(Signature signature) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("role", signature.role().word());
    fields.put("by", signature.by());
    fields.put("on", signature.on().toString());
    if (!signature.qualified()) {
      fields.put("qualified", false);
    }
    fields.put("digest", signature.digest());
    signature.source().ifPresent(source -> fields.put("source", source));
    return fields;
  }

  private static List<Object> pieces(List<PieceRecord> pieces) {
    return pieces.stream().map(RegisterWriter::piece).toList();
  }

  private static Object piece(PieceRecord piece) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("source", piece.source());
    fields.put("target", piece.target());
    fields.put("by", piece.by());
    fields.put("on", piece.on().toString());
    return fields;
  }

  private static Object accepted(AcceptedFinding one) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("rule", one.rule());
    if (!one.language().isEmpty()) {
      fields.put("language", one.language());
    }
    fields.put("reason", one.reason());
    fields.put("role", one.role().word());
    fields.put("by", one.by());
    fields.put("on", one.on().toString());
    fields.put("until", one.until().toString());
    fields.put("finding", one.finding());
    return fields;
  }

  private static Object recall(Recall recall) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", recall.id());
    fields.put("reason", recall.reason());
    fields.put("by", recall.by());
    fields.put("on", recall.on().toString());
    recall.replacedBy().ifPresent(id -> fields.put("replaced_by", id));
    return fields;
  }

  private static Object release(ReleaseRecord release) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("name", release.name());
    fields.put("by", release.by());
    fields.put("on", release.on().toString());
    fields.put("manifest", release.manifest());
    return fields;
  }

  private static <T> Map<String, Object> map(SortedMap<String, T> map, Function<T, Object> writer) {
    Map<String, Object> fields = new LinkedHashMap<>();
    map.forEach((key, value) -> fields.put(key, writer.apply(value)));
    return fields;
  }

  private static void some(Map<String, Object> file, String key, Object value) {
    boolean none = value instanceof Map<?, ?> map ? map.isEmpty() : ((List<?>) value).isEmpty();
    if (!none) {
      file.put(key, value);
    }
  }
}
