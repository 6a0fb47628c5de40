package goniograph.type;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The faces tried for each character, first to last, as a style sheet's list of families asks; the
 * families it does not name come after it, so a foreign word is never lost.
 *
 * @param faces the faces
 * @param language BCP 47 tag of the text's language, for letter shapes of its own; may be empty
 */
public record FaceOrder(List<Face> faces, String language) {
  public FaceOrder {
    faces = List.copyOf(faces);
  }

  /** One family first, the others behind it. */
  public static FaceOrder of(Family first, Weight weight, String language) {
    return of(List.of(first), weight, language);
  }

  /** The named families first, the others behind them in their fixed order. */
  public static FaceOrder of(List<Family> named, Weight weight, String language) {
    Set<Family> families = new LinkedHashSet<>(named);
    families.addAll(List.of(Family.values()));
    List<Face> faces = new ArrayList<>();
    families.forEach(family -> faces.add(Fonts.face(family, weight)));
    return new FaceOrder(faces, language);
  }

  /** The face whose measures rule the line. */
  public Face first() {
    return faces.get(0);
  }

  /** The first face that shows the character. */
  public Optional<Face> showing(int codePoint) {
    for (Face face : faces) {
      if (face.shows(codePoint)) {
        return Optional.of(face);
      }
    }
    return Optional.empty();
  }
}
