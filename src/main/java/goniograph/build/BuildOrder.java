package goniograph.build;

import goniograph.render.Layout;
import java.util.List;

/**
 * What to build.
 *
 * @param entries ids of entries, empty for all
 * @param languages language tags, empty for all of the clinic
 * @param layouts layouts
 * @param papers {@code a4} or {@code letter}
 * @param jobs how many sheets are made at a time, at least 1
 */
public record BuildOrder(
    List<String> entries,
    List<String> languages,
    List<Layout> layouts,
    List<String> papers,
    int jobs) {
  /** Everything, on A4 in the standard layout. */
  public static final BuildOrder ALL =
      new BuildOrder(List.of(), List.of(), List.of(Layout.STANDARD), List.of("a4"), 1);

  public BuildOrder {
    entries = List.copyOf(entries);
    languages = List.copyOf(languages);
    layouts = List.copyOf(layouts);
    papers = List.copyOf(papers);
  }

  /** The same with so many sheets made at a time. */
  public BuildOrder withJobs(int number) {
    return new BuildOrder(entries, languages, layouts, papers, number);
  }

  /** Whether nothing is left out, so that there is an index. */
  public boolean isWhole() {
    return entries.isEmpty() && languages.isEmpty();
  }

  boolean takesEntry(String id) {
    return entries.isEmpty() || entries.contains(id);
  }

  boolean takesLanguage(String tag) {
    return languages.isEmpty() || languages.contains(tag);
  }
}
