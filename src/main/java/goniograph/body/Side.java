package goniograph.body;

/** A side of the body, always the person's own. */
public enum Side {
  LEFT,
  RIGHT;

  /** +1 right, -1 left: the sign of the Z axis on this side. */
  public int sign() {
    return this == RIGHT ? 1 : -1;
  }

  public Side other() {
    return this == RIGHT ? LEFT : RIGHT;
  }
}
