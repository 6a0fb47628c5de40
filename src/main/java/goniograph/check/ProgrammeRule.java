package goniograph.check;

import goniograph.finding.Finding;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import java.util.stream.Stream;

/** A rule about a programme as it is carried out. One that was misread is not judged. */
public interface ProgrammeRule extends Rule {
  /** What it finds in one programme. */
  Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked);

  @Override
  default Stream<Finding> check(Checked checked) {
    return checked.library().programmes().stream()
        .filter(checked::readWell)
        .flatMap(
            programme ->
                check(programme, ProgrammePlan.of(programme, checked.library()), checked)
                    .map(finding -> finding.withEntry(programme.id())));
  }
}
