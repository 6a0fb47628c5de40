package goniograph.matter;

import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The text of an entry in one language.
 *
 * @param title the piece behind {@code #}
 * @param sections the sections in order
 * @param at the place of the whole text
 */
public record Body(Optional<Piece> title, List<Section> sections, Span at) {
  public Body {
    sections = List.copyOf(sections);
  }

  /** One section: its key, and its pieces in order. */
  public record Section(Located<String> key, List<Piece> pieces) {
    public Section {
      pieces = List.copyOf(pieces);
    }
  }

  /** The section with this key. */
  public Optional<Section> section(String key) {
    return sections.stream().filter(section -> section.key().value().equals(key)).findFirst();
  }

  /** The pieces of a section, none if there is no such section. */
  public List<Piece> pieces(String key) {
    return section(key).map(Section::pieces).orElse(List.of());
  }

  /** All pieces in order, the title first. */
  public List<Piece> pieces() {
    List<Piece> all = new ArrayList<>();
    title.ifPresent(all::add);
    sections.forEach(section -> all.addAll(section.pieces()));
    return List.copyOf(all);
  }
}
