package goniograph.register;

import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.matter.Body;
import goniograph.matter.Node;
import goniograph.matter.Piece;
import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.pose.PoseReader;
import goniograph.source.Digest;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The digests that are signed. Comments, layout and the order of keys do not count. */
public final class Digests {
  private Digests() {}

  /**
   * Of an entry in its source language: its front matter, every piece of its text under its
   * heading, and the pose files that it names, with those that they build on.
   */
  public static String entry(Entry entry, Library library) {
    Node.Fields frontMatter = entry.common().frontMatter();
    StringBuilder all = new StringBuilder(Canonical.text(frontMatter));
    entry.text().title().map(Digests::piece).ifPresent(all::append);
    for (Body.Section section : entry.text().sections()) {
      all.append('\n').append(Canonical.quoted(section.key().value()));
      section.pieces().forEach(piece -> all.append(piece(piece)));
    }
    for (String figure : withExtended(figures(frontMatter), library)) {
      all.append('\n').append(Canonical.quoted(figure));
      library.figure(figure).map(YamlReader::read).map(Digests::whole).ifPresent(all::append);
    }
    return Digest.of(all.toString());
  }

  private static SortedSet<String> withExtended(SortedSet<String> figures, Library library) {
    TreeSet<String> all = new TreeSet<>(figures);
    for (String figure : figures) {
      library
          .figure(figure)
          .ifPresent(file -> all.addAll(PoseReader.extended(file, library.figures())));
    }
    return all;
  }

  /** The figures that front matter names, of the entry and of its steps. */
  private static SortedSet<String> figures(Node node) {
    TreeSet<String> names = new TreeSet<>();
    if (node instanceof Node.Items list) {
      list.items().forEach(item -> names.addAll(figures(item)));
    } else if (node instanceof Node.Fields map) {
      for (Node.Field field : map.fields()) {
        boolean named = field.key().equals("figure");
        if (named && field.value() instanceof Node.Scalar name) {
          names.add(name.raw());
        }
        names.addAll(figures(field.value()));
      }
    }
    return names;
  }

  private static String piece(Piece piece) {
    return "\n" + piece.kind() + " " + Canonical.quoted(piece.text());
  }

  /** Of a language version: what each piece was made from, and what it is, in order. */
  static String version(List<PieceRecord> pieces) {
    return Digest.of(
        pieces.stream()
            .map(piece -> piece.source() + " " + piece.target())
            .collect(Collectors.joining("\n")));
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
