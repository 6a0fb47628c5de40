package goniograph.sheet;

import java.util.List;

/**
 * The ladder, highest rung first.
 *
 * @param label for instance "Ladder"
 * @param rungs three to five
 */
public record LadderPicture(String label, List<Rung> rungs) {
  public LadderPicture {
    rungs = List.copyOf(rungs);
  }

  /**
   * One rung.
   *
   * @param dose for instance "8 + 8"
   * @param more what else changes, "" for nothing
   * @param today the word for today on today's rung, "" on the others
   */
  public record Rung(String dose, String more, String today) {}
}
