package goniograph.library;

import goniograph.matter.Located;
import java.util.List;

/**
 * One row of the table of equipment that is looked over before use.
 *
 * @param equipment phrase ids of the things
 * @param check phrase id of what to look at
 * @param source id of a source, or {@code common-practice}
 */
public record EquipmentCheck(
    List<Located<String>> equipment, Located<String> check, Located<String> source) {
  public EquipmentCheck {
    equipment = List.copyOf(equipment);
  }
}
