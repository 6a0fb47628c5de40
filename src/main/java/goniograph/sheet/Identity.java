package goniograph.sheet;

import java.util.Optional;

/**
 * Which sheet this is.
 *
 * @param entry the entry's id
 * @param language BCP 47 tag
 * @param rightToLeft true where the page runs from right to left
 * @param layout layout name, for instance {@code standard}
 * @param paper {@code a4} or {@code letter}
 * @param side {@code left} or {@code right} where the entry has one
 * @param step number of the ladder step, 0 without a ladder
 */
public record Identity(
    String entry,
    String language,
    boolean rightToLeft,
    String layout,
    String paper,
    Optional<String> side,
    int step) {

  /** File name without ending: the entry's id, with the side where there is one. */
  public String fileName() {
    return side.map(word -> entry + "-" + word).orElse(entry);
  }
}
