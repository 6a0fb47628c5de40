package goniograph.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * A frozen release: which sheets it holds, under which codes, and from which files.
 *
 * @param name its name, for instance {@code 2026.3}
 * @param by role id of who froze it
 * @param on the day
 * @param licences of what the sheets are made with, as SPDX identifiers by its name
 * @param sheets the sheets that may be handed out
 * @param leftOut what was not ready, and why
 * @param files digest of each file of the library, by path
 */
public record Manifest(
    String name,
    String by,
    LocalDate on,
    SortedMap<String, String> licences,
    List<Sheet> sheets,
    List<LeftOut> leftOut,
    SortedMap<String, String> files) {

  /** One sheet: an entry in a language. The digest is that of its {@link Standing}. */
  public record Sheet(SheetCode code, String entry, String language, String digest) {}

  /** What is not part of the release. */
  public record LeftOut(String entry, String language, String state, String because) {}

  public Manifest {
    licences = Sorted.copy(licences);
    sheets = List.copyOf(sheets);
    leftOut = List.copyOf(leftOut);
    files = Sorted.copy(files);
  }

  /** The path of the manifest of a release. */
  public static String file(String name) {
    return "shared/releases/" + name + ".yaml";
  }

  /**
   * Freezes a release. Ready sheets of entries without errors get a code that no other sheet has
   * ever had; the others are listed with what keeps them out.
   *
   * @param standings of every entry in every language of the clinic
   * @param faulty ids of entries in which the check finds errors
   * @param taken the codes of earlier releases
   */
  public static Manifest freeze(
      String name,
      String by,
      LocalDate on,
      SortedMap<String, String> licences,
      List<Standing> standings,
      Set<String> faulty,
      Set<SheetCode> taken,
      SortedMap<String, String> files) {
    Set<SheetCode> codes = new TreeSet<>(taken);
    List<Sheet> sheets = new ArrayList<>();
    List<LeftOut> leftOut = new ArrayList<>();
    for (Standing one : standings) {
      if (faulty.contains(one.entry())) {
        leftOut.add(leftOut(one, "faulty", "The check finds errors in it."));
      } else if (one.state() != State.READY) {
        leftOut.add(leftOut(one, one.state().word(), one.because()));
      } else {
        SheetCode code = code(one, name, codes);
        codes.add(code);
        sheets.add(new Sheet(code, one.entry(), one.language(), one.digest()));
      }
    }
    return new Manifest(name, by, on, licences, sheets, leftOut, files);
  }

  private static LeftOut leftOut(Standing one, String state, String because) {
    return new LeftOut(one.entry(), one.language(), state, because);
  }

  private static SheetCode code(Standing one, String release, Set<SheetCode> taken) {
    int attempt = 0;
    SheetCode code;
    do {
      code = SheetCode.of(one.entry(), one.language(), release, one.digest(), attempt++);
    } while (taken.contains(code));
    return code;
  }

  /** The sheet with this code. */
  public Optional<Sheet> sheet(SheetCode code) {
    return sheets.stream().filter(sheet -> sheet.code().equals(code)).findFirst();
  }

  /** The sheet that is exactly this one. */
  public Optional<Sheet> sheet(String entry, String language, String digest) {
    return sheets.stream()
        .filter(sheet -> sheet.entry().equals(entry))
        .filter(sheet -> sheet.language().equals(language))
        .filter(sheet -> sheet.digest().equals(digest))
        .findFirst();
  }
}
