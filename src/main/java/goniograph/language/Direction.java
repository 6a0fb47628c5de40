package goniograph.language;

/** Direction of writing. */
public enum Direction {
  LEFT_TO_RIGHT("ltr"),
  RIGHT_TO_LEFT("rtl");

  private final String code;

  Direction(String code) {
    this.code = code;
  }

  /** The value of HTML's {@code dir}. */
  public String code() {
    return code;
  }
}
