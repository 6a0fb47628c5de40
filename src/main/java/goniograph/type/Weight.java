package goniograph.type;

/** The two weights a sheet is set in. */
public enum Weight {
  REGULAR("400Regular"),
  BOLD("700Bold");

  private final String fileName;

  Weight(String fileName) {
    this.fileName = fileName;
  }

  String fileName() {
    return fileName;
  }
}
