package goniograph.sheet;

import java.util.List;
import java.util.Optional;

/**
 * One leaf: the single truth of a sheet, in finished words. Blocks stand in the order of the page.
 *
 * @param identity which sheet this is
 * @param band the words across the page of a sheet that is not final
 * @param head title and what stands beside it
 * @param older what this sheet does to older ones: tick boxes on a drawer copy
 * @param why one line in the patient's life
 * @param dose the dose, empty on an advice topic
 * @param drawings the panels, empty where there are none
 * @param steps what to do
 * @param know further lines of an advice topic, empty on an exercise
 * @param stop the stop-and-call box
 * @param contact the clinic's phone, right below the box
 * @param foot what the clinic needs to file the page
 * @param back the second page, empty on an advice topic
 */
public record Sheet(
    Identity identity,
    Optional<Band> band,
    Head head,
    List<TickLine> older,
    LabelledLine why,
    Optional<DoseTable> dose,
    Optional<Drawings> drawings,
    Steps steps,
    Optional<LabelledLines> know,
    StopBox stop,
    Contact contact,
    Foot foot,
    Optional<Back> back) {
  public Sheet {
    older = List.copyOf(older);
  }
}
