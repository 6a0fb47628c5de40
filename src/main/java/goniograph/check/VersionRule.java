package goniograph.check;

import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Version;
import java.util.stream.Stream;

/** A rule about the text of an entry in one language. */
public interface VersionRule extends Rule {
  /** What it finds in one text. */
  Stream<Finding> check(Entry entry, Version version, Checked checked);

  @Override
  default Stream<Finding> check(Checked checked) {
    return checked.entries().flatMap(entry -> all(entry, checked));
  }

  private Stream<Finding> all(Entry entry, Checked checked) {
    return entry.languages().stream()
        .flatMap(language -> entry.version(language).stream())
        .flatMap(
            version ->
                check(entry, version, checked)
                    .map(f -> f.withEntry(entry.id()).withLanguage(version.language())));
  }
}
