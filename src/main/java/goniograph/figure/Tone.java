package goniograph.figure;

/** What a painted area is made of; a style gives each its colour. */
enum Tone {
  SKIN,
  SHIRT,
  TROUSERS,
  SHOE,
  SOLE,
  HAIR,
  CLOTH,
  SUPPORT,
  SUPPORT_TOP,
  SUPPORT_SIDE,
  BAND
}
