package goniograph.library;

import goniograph.matter.Spellings;
import java.util.List;

/** The kinds of entries, with the folder and the text sections of each. */
public enum Kind {
  EXERCISE(
      "content/exercises",
      "entry/1",
      List.of("why", "do", "feel", "easier", "landmark"),
      List.of("harder", "picture", "captions")),
  ADVICE("content/advice", "entry/1", List.of("why", "do"), List.of("know", "feel", "picture")),
  PROGRAMME("content/programmes", "programme/1", List.of(), List.of("why", "do", "know"));

  private final String folder;
  private final String schema;
  private final List<String> required;
  private final List<String> optional;

  Kind(String folder, String schema, List<String> required, List<String> optional) {
    this.folder = folder;
    this.schema = schema;
    this.required = required;
    this.optional = optional;
  }

  /** The folder in which each entry of this kind has a folder of its own. */
  public String folder() {
    return folder;
  }

  /** The schema its front matter names. */
  public String schema() {
    return schema;
  }

  /** Section keys that the source text must have. */
  public List<String> requiredSections() {
    return required;
  }

  /** Section keys that a text may have besides. */
  public List<String> optionalSections() {
    return optional;
  }

  /** Its word in front matter. */
  public String word() {
    return Spellings.word(this);
  }
}
