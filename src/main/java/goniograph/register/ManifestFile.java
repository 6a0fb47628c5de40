package goniograph.register;

import static goniograph.register.RegisterFields.list;
import static goniograph.register.RegisterFields.map;
import static goniograph.register.RegisterFields.plain;

import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import goniograph.source.Files;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A manifest as a file. The same manifest gives the same bytes. */
public final class ManifestFile {
  private static final String SCHEMA = "release/1";
  private static final Spelling<SheetCode> CODE = ManifestFile::code;

  private ManifestFile() {}

  /** Reads the manifest of a release; empty where it is missing or cannot be read whole. */
  public static Read<Optional<Manifest>> read(Files files, String name) {
    return RegisterReader.read(
        files, Manifest.file(name), ManifestFile::manifest, Optional.empty());
  }

  private static Optional<Manifest> manifest(Form form) {
    RegisterFields.schema(form, SCHEMA);
    Optional<String> name = plain(form.required("name", "2026.3").as(RegisterFields.RELEASE));
    Optional<String> by = RegisterFields.by(form);
    Optional<LocalDate> on = RegisterFields.on(form);
    var licences = map(form.optional("licences"), "the licences", ManifestFile::text);
    var sheets = list(form.optional("sheets"), "a sheet", ManifestFile::sheet);
    var leftOut = list(form.optional("left_out"), "a sheet left out", ManifestFile::leftOut);
    var paths = map(form.optional("files"), "the files", ManifestFile::text);
    if (name.isEmpty() || by.isEmpty() || on.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Manifest(name.get(), by.get(), on.get(), licences, sheets, leftOut, paths));
  }

  private static Optional<Manifest.Sheet> sheet(Form form) {
    Optional<SheetCode> code = plain(form.required("code", "K7F3 2M9D 4Q").as(CODE));
    Optional<String> entry = id(form, "entry");
    Optional<String> language = plain(form.required("language", "en").as(Spellings.TEXT));
    Optional<String> digest = plain(form.required("digest", "…").as(RegisterFields.DIGEST));
    if (code.isEmpty() || entry.isEmpty() || language.isEmpty() || digest.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Manifest.Sheet(code.get(), entry.get(), language.get(), digest.get()));
  }

  private static Optional<Manifest.LeftOut> leftOut(Form form) {
    return Optional.of(
        new Manifest.LeftOut(
            id(form, "entry").orElse(""),
            text(form.required("language", "en")),
            text(form.required("state", "unsigned")),
            text(form.required("because", "…"))));
  }

  private static Optional<String> id(Form form, String key) {
    return plain(form.required(key, "hp-chair-rise").as(Spellings.ID_WORD));
  }

  private static String text(Value value) {
    return value.as(Spellings.TEXT).map(Located::value).orElse("");
  }

  private static Optional<SheetCode> code(String raw, Spelling.Refusal refusal) {
    SheetCode.Typed typed = SheetCode.parse(raw);
    if (typed.code().isEmpty()) {
      refusal.because(
          "register-code", typed.wrong(), "Take the old file back from version control.");
    }
    return typed.code();
  }

  /** The bytes of a manifest file. */
  public static byte[] bytes(Manifest manifest) {
    Map<String, Object> file = new LinkedHashMap<>();
    file.put("schema", SCHEMA);
    file.put("name", manifest.name());
    file.put("by", manifest.by());
    file.put("on", manifest.on().toString());
    file.put("licences", manifest.licences());
    file.put("sheets", manifest.sheets().stream().map(ManifestFile::sheet).toList());
    file.put("left_out", manifest.leftOut().stream().map(ManifestFile::leftOut).toList());
    file.put("files", manifest.files());
    return RegisterWriter.bytes(file);
  }

  private static Map<String, Object> sheet(Manifest.Sheet sheet) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("code", sheet.code().grouped());
    fields.put("entry", sheet.entry());
    fields.put("language", sheet.language());
    fields.put("digest", sheet.digest());
    return fields;
  }

  private static Map<String, Object> leftOut(Manifest.LeftOut out) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("entry", out.entry());
    fields.put("language", out.language());
    fields.put("state", out.state());
    fields.put("because", out.because());
    return fields;
  }
}
