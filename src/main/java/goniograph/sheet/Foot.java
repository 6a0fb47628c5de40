package goniograph.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What the clinic needs to file and recall the page.
 *
 * @param clinic the clinic's name
 * @param lines release, approval, review, translation and language, in words
 * @param codeLabel for instance "Sheet code"
 * @param code the sheet code in groups, empty where the sheet is not released
 * @param qr the code as a square of black modules, row by row; empty without a code
 * @param noCode what stands in the code's place where there is none
 */
public record Foot(
    String clinic,
    List<String> lines,
    String codeLabel,
    Optional<String> code,
    List<String> qr,
    String noCode) {
  public Foot {
    lines = List.copyOf(lines);
    qr = List.copyOf(qr);
  }
}
