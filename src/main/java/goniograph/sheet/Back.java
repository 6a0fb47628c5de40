package goniograph.sheet;

import java.util.List;
import java.util.Optional;

/**
 * The second page of a leaf: to learn and to mark on.
 *
 * @param title the short title with its side
 * @param lines feel, all right, easier, harder
 * @param ladder the ladder with today's step, empty without one
 * @param criteria when to go up and down
 * @param equipment what is needed
 * @param writing labels of the lines to write on
 * @param diary four weeks to mark
 */
public record Back(
    String title,
    List<LabelledLine> lines,
    Optional<LadderPicture> ladder,
    List<LabelledLines> criteria,
    Optional<LabelledLines> equipment,
    Writing writing,
    Diary diary) {
  public Back {
    lines = List.copyOf(lines);
    criteria = List.copyOf(criteria);
  }
}
