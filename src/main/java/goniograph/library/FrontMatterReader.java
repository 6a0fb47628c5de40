package goniograph.library;

import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.finding.Finding;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Outline;
import goniograph.matter.Shape;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Reads the front matter of an entry of one kind. */
record FrontMatterReader(Kind kind, Consumer<Finding> findings) {
  private static final String PAIN = "pain.";

  /** Where an entry stands, and what stands beside its front matter. */
  record Folder(
      String id,
      SourceFile file,
      Node.Fields fields,
      SortedMap<String, Version> versions,
      Optional<Node> register) {}

  /** What the front matter of an entry of this kind takes, by its reader's own account. */
  static Shape shape(Kind kind) {
    Outline outline = new Outline();
    Form form = Form.describing(outline);
    Node.Fields none = new Node.Fields(List.of(), form.at());
    SourceFile file = SourceFile.of("", "");
    new FrontMatterReader(kind, finding -> {})
        .read(form, new Folder("ID", file, none, new TreeMap<>(), Optional.empty()));
    return outline.shape();
  }

  /** The entry, or nothing where it could not be made out. */
  Optional<Entry> read(Form form, Folder folder) {
    form.required("schema", kind.schema()).as(Spellings.oneOf(List.of(kind.schema())));
    form.required("kind", kind.word()).as(Spellings.oneOf(List.of(kind.word())));
    Located<String> name =
        form.required("id", folder.id())
            .as(Spellings.ID_WORD)
            .orElse(new Located<>(folder.id(), Span.of(folder.file().path())));
    sameAsFolder(name, folder.id());
    CommonReader shared = CommonReader.read(form);
    return entry(
        form,
        new Common(
            new Located<>(folder.id(), name.at()),
            folder.file(),
            folder.fields(),
            folder.versions(),
            shared.statements(),
            shared.evidence(),
            shared.reviewDue(),
            folder.register()));
  }

  private Optional<Entry> entry(Form form, Common common) {
    return switch (kind) {
      case EXERCISE -> new ExerciseReader(findings).read(form, common).map(Entry.class::cast);
      case ADVICE -> Optional.of(new Advice(common, pain(form)));
      case PROGRAMME -> Optional.of(ProgrammeReader.read(form, common));
    };
  }

  private LocatedDose pain(Form form) {
    List<Node.Field> leaves =
        form.optional("pain").leaves(painSpellings()).stream()
            .map(leaf -> new Node.Field(PAIN + leaf.key(), leaf.keyAt(), leaf.value()))
            .toList();
    DoseReader reader = new DoseReader(findings);
    reader.unknown(leaves, "`pain`");
    return reader.dose(
        leaves.stream().filter(leaf -> DoseField.ofKey(leaf.key()).isPresent()).toList());
  }

  private static Map<String, Spelling<DoseValue>> painSpellings() {
    Map<String, Spelling<DoseValue>> spellings = new LinkedHashMap<>();
    DoseReader.SPELLINGS.forEach(
        (key, spelling) -> {
          if (key.startsWith(PAIN)) {
            spellings.put(key.substring(PAIN.length()), spelling);
          }
        });
    return spellings;
  }

  private void sameAsFolder(Located<String> name, String id) {
    if (!name.value().equals(id)) {
      findings.accept(
          Finding.error(
              "entry-folder",
              name.at(),
              "The id `" + name.value() + "` is not the name of its folder, `" + id + "`.",
              "One thing with two names is looked up under the wrong one.",
              "Write `id: " + id + "`, or rename the folder."));
    }
  }
}
