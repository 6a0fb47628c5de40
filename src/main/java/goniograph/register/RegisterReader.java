package goniograph.register;

import static goniograph.register.RegisterFields.list;
import static goniograph.register.RegisterFields.map;
import static goniograph.register.RegisterFields.schema;

import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.matter.Form;
import goniograph.matter.Node;
import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Reads register files. Never throws on what they contain. */
public final class RegisterReader {
  static final String SCHEMA = "register/1";

  /** The path of the shared register. */
  public static final String SHARED = "shared/register.yaml";

  private RegisterReader() {}

  /** The path of the register of the entry in {@code folder}. */
  public static String file(String folder) {
    return folder + "/register.yaml";
  }

  /**
   * The register of the entry in {@code folder}, for instance {@code content/advice/ad-bad-day}.
   */
  public static Read<EntryRegister> entry(Files files, String folder) {
    return read(files, file(folder), RegisterReader::entry, EntryRegister.NONE);
  }

  /** The register of an entry of a library that was read; its YAML findings are the library's. */
  public static Read<EntryRegister> entry(Entry entry) {
    List<Finding> findings = new ArrayList<>();
    EntryRegister register =
        entry.common().register().orElse(null) instanceof Node.Fields fields
            ? form(fields, findings::add, RegisterReader::entry)
            : EntryRegister.NONE;
    return new Read<>(register, findings.stream().map(one -> one.withEntry(entry.id())).toList());
  }

  /** The register of what all sheets use. */
  public static Read<SharedRegister> shared(Files files) {
    return read(files, SHARED, RegisterReader::shared, SharedRegister.NONE);
  }

  private static EntryRegister entry(Form form) {
    schema(form, SCHEMA);
    return new EntryRegister(
        RegisterFields.signatures(form.optional("entry")),
        map(form.optional("versions"), "the language versions", RegisterFields::signatures),
        map(form.optional("pieces"), "the pieces", RegisterFields::pieces));
  }

  private static SharedRegister shared(Form form) {
    schema(form, SCHEMA);
    return new SharedRegister(
        map(form.optional("rules"), "the rule files", RegisterFields::signatures),
        map(
            form.optional("statements"),
            "the statements",
            ids -> map(ids, "the statements of a language", RegisterFields::signatures)),
        map(form.optional("phrases"), "the phrases", RegisterFields::signatures),
        list(form.optional("recalls"), "a recall", RegisterFields::recall),
        list(form.optional("releases"), "a release", RegisterFields::release));
  }

  static <T> Read<T> read(Files files, String path, Function<Form, T> reader, T none) {
    Optional<SourceFile> file = files.text(path);
    if (file.isEmpty()) {
      return new Read<>(none, List.of());
    }
    Yaml yaml = YamlReader.read(file.get());
    List<Finding> findings = new ArrayList<>(yaml.findings());
    T value = none;
    if (yaml.root().orElse(null) instanceof Node.Fields fields) {
      value = form(fields, findings::add, reader);
    } else if (findings.isEmpty()) {
      findings.add(noMap(file.get()));
    }
    return new Read<>(value, findings);
  }

  private static <T> T form(
      Node.Fields fields, Consumer<Finding> findings, Function<Form, T> reader) {
    Form form = new Form(fields, "the register", findings);
    T value = reader.apply(form);
    form.finish();
    return value;
  }

  private static Finding noMap(SourceFile file) {
    return Finding.error(
        "register-damaged",
        file.span(0, file.text().length()),
        "This file holds no register.",
        "Without it nobody can tell what has been signed.",
        "Take the old file back from version control, or delete it and sign again.");
  }
}
