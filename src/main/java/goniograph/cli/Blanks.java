package goniograph.cli;

import goniograph.library.Kind;
import goniograph.library.Library;
import goniograph.matter.Spellings;
import goniograph.source.Files;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** Puts blanks into a library, and never over a file that is there. */
record Blanks(Common common) {

  /** The id that was typed, or a refusal with the right spelling. */
  static String id(String typed) {
    return Spellings.ID_WORD
        .read(
            typed,
            (rule, what, mend, grade, better) -> {
              throw new Refusal(what + " " + mend);
            })
        .orElseThrow();
  }

  /** The path of the source text of an entry. */
  static String entry(Kind kind, String id) {
    return kind.folder() + "/" + id + "/" + Library.SOURCE_LANGUAGE + ".md";
  }

  /**
   * Makes all files or none.
   *
   * @param blanks text of the blank by the path it is put at
   */
  void make(String id, Map<String, String> blanks) {
    Files files = common.files();
    taken(files, id);
    for (String path : blanks.keySet()) {
      if (files.bytes(path).isPresent()) {
        throw new Refusal(
            path + " is there already and is left as it is. Choose another name, or move it away.");
      }
    }
    blanks.forEach((path, blank) -> files.write(path, blank.getBytes(StandardCharsets.UTF_8)));
    blanks.keySet().forEach(path -> common.out().println("Made " + path));
    common
        .out()
        .println(
            "Fill in every field, then look what is still open: `goniograph check " + id + "`.");
  }

  /** An id is used once, whatever the kind of entry. */
  private static void taken(Files files, String id) {
    for (Kind kind : Kind.values()) {
      if (!files.list(kind.folder() + "/" + id).isEmpty()) {
        throw new Refusal(
            "There is an entry `"
                + id
                + "` in "
                + kind.folder()
                + " already. Choose another name.");
      }
    }
  }

  /** The text of a blank for the entry with this id. */
  static String blank(String name, String id) {
    return text(name).replaceAll("\\bID\\b", id);
  }

  private static String text(String blank) {
    try (InputStream in = Blanks.class.getResourceAsStream("blank/" + blank)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the blank " + blank, e);
    }
  }
}
