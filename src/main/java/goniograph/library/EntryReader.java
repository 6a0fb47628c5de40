package goniograph.library;

import goniograph.finding.Finding;
import goniograph.matter.EntryFile;
import goniograph.matter.Form;
import goniograph.matter.Node;
import goniograph.matter.Value;
import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the folder of one entry. */
final class EntryReader {
  private static final Pattern VERSION = Pattern.compile("([a-z]{2,3}(?:-[A-Za-z0-9]+)*)\\.md");
  private static final String REGISTER = "register.yaml";

  private final Files files;
  private final Kind kind;
  private final String folder;
  private final String id;
  private final Consumer<Finding> findings;

  EntryReader(Files files, Kind kind, String id, Consumer<Finding> findings) {
    this.files = files;
    this.kind = kind;
    this.id = id;
    this.folder = kind.folder() + "/" + id;
    this.findings = finding -> findings.accept(finding.withEntry(id));
  }

  /** The entry, or nothing where it could not be made out; findings say why. */
  Optional<Entry> read() {
    String path = folder + "/" + Library.SOURCE_LANGUAGE + ".md";
    Optional<SourceFile> source = files.text(path);
    if (source.isEmpty()) {
      sourceMissing(path);
      return Optional.empty();
    }
    EntryFile file = EntryFile.read(source.get());
    file.findings().forEach(findings);
    SortedMap<String, Version> versions = versions();
    versions.put(
        Library.SOURCE_LANGUAGE, new Version(Library.SOURCE_LANGUAGE, source.get(), file.body()));
    new SectionChecks(kind, findings).known(file.body());
    return matter(file).flatMap(fields -> entry(fields, file, versions));
  }

  private void sourceMissing(String path) {
    findings.accept(
        Finding.error(
            "entry-source-missing",
            Span.of(path),
            "The folder `" + folder + "` has no `" + Library.SOURCE_LANGUAGE + ".md`.",
            "Dose and safety stand in the source language's file; without it there is no sheet.",
            "Add the file, or take the folder out."));
  }

  private Optional<Node.Fields> matter(EntryFile file) {
    if (file.frontMatter().isEmpty()) {
      findings.accept(
          Finding.error(
              "front-matter-missing",
              file.file().span(0, 0),
              "The file does not begin with front matter.",
              "Dose and safety stand there.",
              "Begin the file with a line `---`, the fields, and a second line `---`."));
      return Optional.empty();
    }
    Yaml yaml = file.frontMatter().get();
    return yaml.whole() ? fields(yaml, file.file()) : Optional.empty();
  }

  private Optional<Node.Fields> fields(Yaml yaml, SourceFile file) {
    Node empty = new Node.Fields(List.of(), file.span(0, 0));
    return new Value("front matter", Optional.of(yaml.root().orElse(empty)), findings).fields();
  }

  private Optional<Entry> entry(
      Node.Fields fields, EntryFile file, SortedMap<String, Version> versions) {
    Consumer<Finding> told = FieldGuide.of(kind).explaining(fields, findings);
    Form form = new Form(fields, "the entry", told);
    FrontMatterReader.Folder place =
        new FrontMatterReader.Folder(id, file.file(), fields, versions, register());
    Optional<Entry> entry = new FrontMatterReader(kind, told).read(form, place);
    form.finish();
    new SectionChecks(kind, findings).complete(file.body(), form.optional("ladder").present());
    return entry;
  }

  private SortedMap<String, Version> versions() {
    SortedMap<String, Version> versions = new TreeMap<>();
    for (String path : files.list(folder)) {
      String name = path.substring(folder.length() + 1);
      Matcher version = VERSION.matcher(name);
      if (version.matches() && !version.group(1).equals(Library.SOURCE_LANGUAGE)) {
        files
            .text(path)
            .ifPresent(file -> versions.put(version.group(1), version(version.group(1), file)));
      } else if (!version.matches() && !name.equals(REGISTER)) {
        unknownFile(path, name);
      }
    }
    return versions;
  }

  private Version version(String language, SourceFile file) {
    Consumer<Finding> own = finding -> findings.accept(finding.withLanguage(language));
    EntryFile read = EntryFile.read(file);
    read.findings().forEach(own);
    new SectionChecks(kind, own).known(read.body());
    if (read.frontMatter().isPresent()) {
      own.accept(
          Finding.error(
              "version-front-matter",
              file.span(0, 3),
              "A language version has no front matter.",
              "Dose and safety have one home: the source language's file.",
              "Take out everything before `# Title`."));
    }
    return new Version(language, file, read.body());
  }

  private void unknownFile(String path, String name) {
    findings.accept(
        Finding.warning(
            "file-unknown",
            Span.of(path),
            "`" + name + "` is not a file that an entry has.",
            "It is not read, whatever it says.",
            "Name a language version by its language, for instance `pl.md`, or take it out."));
  }

  private Optional<Node> register() {
    List<Finding> found = new ArrayList<>();
    Optional<Yaml> yaml = files.text(folder + "/" + REGISTER).map(YamlReader::read);
    yaml.ifPresent(read -> found.addAll(read.findings()));
    found.forEach(findings);
    return yaml.filter(Yaml::whole).flatMap(Yaml::root);
  }
}
