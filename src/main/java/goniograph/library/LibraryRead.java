package goniograph.library;

import goniograph.finding.Finding;
import java.util.List;

/**
 * What was read from a folder.
 *
 * @param library the library as far as it could be read
 * @param findings what is wrong with the form of its files, in report order
 */
public record LibraryRead(Library library, List<Finding> findings) {
  public LibraryRead {
    findings = findings.stream().sorted(Finding.ORDER).toList();
  }
}
