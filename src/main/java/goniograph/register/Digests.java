package goniograph.register;

import goniograph.matter.Body;
import goniograph.matter.EntryFile;
import goniograph.matter.Node;
import goniograph.matter.Piece;
import goniograph.matter.Yaml;
import goniograph.source.Digest;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The digests that are signed. Comments, layout and the order of keys do not count. */
public final class Digests {
  private Digests() {}

  /**
   * Of an entry in its source language: its front matter, every piece of its text under its
   * heading, and the pose files its figures are drawn from.
   *
   * @param file the entry
   * @param poses its pose files, in a fixed order
   */
  public static String entry(EntryFile file, List<Yaml> poses) {
    StringBuilder all = new StringBuilder();
    file.frontMatter().flatMap(Yaml::root).map(Canonical::text).ifPresent(all::append);
    file.body().title().map(Digests::piece).ifPresent(all::append);
    for (Body.Section section : file.body().sections()) {
      all.append('\n').append(Canonical.quoted(section.key().value()));
      section.pieces().forEach(piece -> all.append(piece(piece)));
    }
    poses.forEach(pose -> all.append('\n').append(whole(pose)));
    return Digest.of(all.toString());
  }

  private static String piece(Piece piece) {
    return "\n" + piece.kind() + " " + Canonical.quoted(piece.text());
  }

  /** Of a language version: the digests of its pieces, in the order of its text. */
  public static String version(List<String> pieces) {
    return Digest.of(String.join("\n", pieces));
  }

  /** Of a file as one: rules, phrases, a pose. */
  public static String whole(Yaml file) {
    return Canonical.digest(file.documents());
  }

  /** Of every statement of a statement file, by id. */
  public static SortedMap<String, String> statements(Yaml file) {
    TreeMap<String, String> digests = new TreeMap<>();
    if (file.root().orElse(null) instanceof Node.Fields map) {
      map.fields().forEach(field -> digests.put(field.key(), Canonical.digest(field.value())));
    }
    return digests;
  }
}
