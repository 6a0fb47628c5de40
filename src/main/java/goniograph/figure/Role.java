package goniograph.figure;

/** How a part is told apart: by weight, hatch and colour. */
enum Role {
  NEAR,
  FAR,
  MOVING,
  SUPPORT,
  PROP
}
