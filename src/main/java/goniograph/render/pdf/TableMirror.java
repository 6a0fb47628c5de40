package goniograph.render.pdf;

import com.openhtmltopdf.newtable.TableCellBox;
import com.openhtmltopdf.newtable.TableSectionBox;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;

/**
 * Turns the columns of right-to-left tables round. The layout engine sets the first column at the
 * left whatever the direction; moving the finished cells leaves the source order, and so the
 * reading order of the tagged PDF, as it is.
 */
final class TableMirror {
  private TableMirror() {}

  static void apply(BlockBox root) {
    Boxes.visitPage(
        root,
        box -> {
          if (box instanceof TableSectionBox section && section.getStyle().isDirectionRTL()) {
            turn(section);
          }
        });
  }

  private static void turn(TableSectionBox section) {
    for (Box row : section.getChildren()) {
      for (Box cell : row.getChildren()) {
        if (cell instanceof TableCellBox) {
          cell.setX(section.getWidth() - cell.getX() - cell.getWidth());
        }
      }
    }
    section.calcChildLocations();
  }
}
