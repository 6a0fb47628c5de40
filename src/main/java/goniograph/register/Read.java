package goniograph.register;

import goniograph.finding.Finding;
import java.util.List;

/**
 * What was read from a file of the register.
 *
 * @param value as far as it could be read; a signature that could not be read counts as none
 * @param findings what is wrong with the file; no signature may be added to it before it is mended
 */
public record Read<T>(T value, List<Finding> findings) {
  public Read {
    findings = List.copyOf(findings);
  }
}
