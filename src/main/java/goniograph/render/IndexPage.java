package goniograph.render;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The page that shows what a build made.
 *
 * @param clinic the clinic's name
 * @param today the day it was built for
 * @param entries the entries in order
 */
public record IndexPage(String clinic, String today, List<Entry> entries) {
  public IndexPage {
    entries = List.copyOf(entries);
  }

  /**
   * One entry.
   *
   * @param id its id
   * @param title its title in the source language
   * @param drawings its drawings, in order
   * @param sheets its sheets
   */
  public record Entry(String id, String title, List<String> drawings, List<Link> sheets) {
    public Entry {
      drawings = List.copyOf(drawings);
      sheets = List.copyOf(sheets);
    }
  }

  /**
   * One sheet.
   *
   * @param title its title in its own language
   * @param language its language tag
   * @param languageName the language in its own script and in English
   * @param rightToLeft true where it runs from right to left
   * @param path path of its files without ending, empty where it was not made
   * @param state how it stands, in words
   */
  public record Link(
      String title,
      String language,
      String languageName,
      boolean rightToLeft,
      Optional<String> path,
      String state) {}

  /** The page as HTML. */
  public String html() {
    return Templates.fill(
        "index/index.jte", Map.of("page", this, "style", Templates.style("index.css")));
  }
}
