package goniograph.matter;

import goniograph.finding.Finding;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One Markdown file: front matter between two fences of {@code ---}, if it begins with one, and
 * text.
 *
 * @param file the file
 * @param frontMatter what stands between the fences; empty where the file has none
 * @param body the text
 * @param findings what is wrong with the form of either, in the order of the file
 */
public record EntryFile(
    SourceFile file, Optional<Yaml> frontMatter, Body body, List<Finding> findings) {
  private static final Pattern FENCE = Pattern.compile("(?m)^---[ \t]*\r?(\n|\\z)");

  public EntryFile {
    findings = List.copyOf(findings);
  }

  /** Reads a file. */
  public static EntryFile read(SourceFile file) {
    int start = file.text().startsWith("\uFEFF") ? 1 : 0;
    Matcher fence = FENCE.matcher(file.text()).region(start, file.text().length());
    if (!fence.lookingAt()) {
      return text(file, start);
    }
    int from = fence.end();
    if (fence.find()) {
      return matterAndText(file, from, fence.start(), fence.end());
    }
    return unclosed(file, start);
  }

  private static EntryFile text(SourceFile file, int from) {
    List<Finding> findings = new ArrayList<>();
    Body body = MarkdownReader.read(file, from, findings::add);
    return new EntryFile(file, Optional.empty(), body, findings);
  }

  private static EntryFile matterAndText(SourceFile file, int from, int to, int text) {
    Yaml matter = YamlReader.read(file, from, to);
    List<Finding> findings = new ArrayList<>(matter.findings());
    Body body = MarkdownReader.read(file, text, findings::add);
    return new EntryFile(file, Optional.of(matter), body, findings);
  }

  private static EntryFile unclosed(SourceFile file, int start) {
    Finding finding =
        Finding.error(
            "front-matter-unclosed",
            file.span(start, start + 3),
            "The front matter begins here and never ends.",
            "Nobody can tell where the dose ends and the text begins.",
            "Put a line `---` behind the last field, before `# Title`.");
    int end = file.text().length();
    Body empty = new Body(Optional.empty(), List.of(), file.span(end, end));
    return new EntryFile(
        file, Optional.of(new Yaml(List.of(), false, List.of())), empty, List.of(finding));
  }
}
