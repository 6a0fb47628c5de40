package goniograph.source;

import java.util.List;

/** What a path inside a folder may look like. */
final class Paths {
  private Paths() {}

  /** The path itself, if it is relative and stays inside its folder. */
  static String checked(String path) {
    List<String> parts = List.of(path.split("/", -1));
    if (path.contains("\\") || path.contains(":") || parts.contains("..") || parts.contains("")) {
      throw new IllegalArgumentException("not a path inside the folder: " + path);
    }
    return path;
  }
}
