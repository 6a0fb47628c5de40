package goniograph.matter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Notes what a reader asks for in place of reading a file: run a reader on {@link Form#describing},
 * and {@link #shape} is what that reader takes. So a schema cannot say another thing than the
 * reader.
 */
public final class Outline {
  private final Set<Shape> scalars = new LinkedHashSet<>();
  private final Map<String, Outline> keys = new LinkedHashMap<>();
  private final Set<String> required = new TreeSet<>();
  private @Nullable Outline items;
  private @Nullable Outline others;
  private boolean map;
  private boolean dotted;

  /** What was asked for; any text where nothing was. */
  public Shape shape() {
    List<Shape> shapes = new ArrayList<>(scalars);
    if (items != null) {
      shapes.add(new Shape.Items(items.shape()));
    }
    if (map) {
      shapes.add(
          new Shape.Fields(fields(), Optional.ofNullable(others).map(Outline::shape), dotted));
    }
    return shapes.isEmpty()
        ? Shape.TEXT
        : shapes.size() == 1 ? shapes.get(0) : new Shape.AnyOf(shapes);
  }

  private List<Shape.Field> fields() {
    return keys.entrySet().stream()
        .map(
            key ->
                new Shape.Field(
                    key.getKey(), key.getValue().shape(), required.contains(key.getKey())))
        .toList();
  }

  void scalar(Shape shape) {
    scalars.add(shape);
  }

  void map() {
    map = true;
  }

  void required(String key) {
    required.add(key);
  }

  /** A key of the map; with dots, one inside another. */
  Outline key(String key) {
    map = true;
    int dot = key.indexOf('.');
    Outline first = keys.computeIfAbsent(dot < 0 ? key : key.substring(0, dot), k -> new Outline());
    return dot < 0 ? first : first.key(key.substring(dot + 1));
  }

  void dotted(Map<String, ? extends Spelling<?>> leaves) {
    dotted = true;
    leaves.forEach((key, spelling) -> key(key).scalar(spelling.shape()));
  }

  Outline items() {
    items = items == null ? new Outline() : items;
    return items;
  }

  Outline others() {
    map = true;
    others = others == null ? new Outline() : others;
    return others;
  }
}
