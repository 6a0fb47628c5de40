package goniograph.render;

import java.util.List;
import java.util.Optional;

/**
 * A layout: one template, one style, and this line of registration.
 *
 * @param name as typed, for instance {@code standard}
 * @param template the paper's template
 * @param style the paper's style
 * @param glyphScale size of the glyphs against the standard layout
 */
public record Layout(String name, String template, String style, double glyphScale) {
  /** One exercise a leaf, front and back, 14 pt. */
  public static final Layout STANDARD =
      new Layout("standard", "paper/standard.jte", "standard.css", 1);

  /** Every layout there is. */
  public static final List<Layout> ALL = List.of(STANDARD);

  /** The layout of this name. */
  public static Optional<Layout> named(String name) {
    return ALL.stream().filter(layout -> layout.name.equals(name)).findFirst();
  }
}
