package goniograph.type;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The faces of all families and weights, loaded once. */
public final class Fonts {
  private static final List<Face> FACES = load();

  private Fonts() {}

  private static List<Face> load() {
    List<Face> faces = new ArrayList<>();
    for (Family family : Family.values()) {
      for (Weight weight : Weight.values()) {
        faces.add(Face.load(family, weight));
      }
    }
    return List.copyOf(faces);
  }

  /** The face of a family in a weight. */
  public static Face face(Family family, Weight weight) {
    return FACES.get(family.ordinal() * Weight.values().length + weight.ordinal());
  }

  /**
   * The characters of a text that no face of the order shows, each once, in the order in which they
   * stand.
   */
  public static List<MissingGlyph> missing(String text, FaceOrder order) {
    Set<MissingGlyph> missing = new LinkedHashSet<>();
    text.codePoints()
        .filter(c -> order.showing(c).isEmpty())
        .forEach(c -> missing.add(MissingGlyph.of(c, order.first().family())));
    return new ArrayList<>(missing);
  }

  /** The first family that shows a character, whatever its script. */
  public static Optional<Family> familyShowing(int codePoint) {
    return FaceOrder.of(Family.LATIN, Weight.REGULAR, "").showing(codePoint).map(Face::family);
  }
}
