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
import goniograph.source.Span;
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
        entry
            .common()
            .register()
            .map(root -> root(root, findings::add, RegisterReader::entry, EntryRegister.NONE))
            .orElse(EntryRegister.NONE);
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
        map(form.optional("pieces"), "the pieces", RegisterFields::pieces),
        list(form.optional("accepted"), "an acceptance", RegisterFields::accepted));
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
    Node empty = new Node.Fields(List.of(), file.get().span(0, 0));
    T value = yaml.whole() ? root(yaml.root().orElse(empty), findings::add, reader, none) : none;
    return new Read<>(value, findings);
  }

  private static <T> T root(
      Node root, Consumer<Finding> findings, Function<Form, T> reader, T none) {
    if (!(root instanceof Node.Fields fields)) {
      findings.accept(noMap(root.at()));
      return none;
    }
    Form form = new Form(fields, "the register", findings);
    T value = reader.apply(form);
    form.finish();
    return value;
  }

  private static Finding noMap(Span at) {
    return Finding.error(
        "register-damaged",
        at,
        "This file holds no register.",
        "Without it nobody can tell what has been signed.",
        "Take the old file back from version control, or delete it and sign again.");
  }
}
