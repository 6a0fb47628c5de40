package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Digest;
import goniograph.source.Files;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The releases of a library.
 *
 * @param manifests oldest first
 */
public record Releases(List<Manifest> manifests) {
  public Releases {
    manifests = List.copyOf(manifests);
  }

  /** A sheet and the release it was found in. */
  public record Released(Manifest release, Manifest.Sheet sheet) {}

  /** Reads the manifests that the register names; one that was edited since gives a finding. */
  public static Read<Releases> read(Files files, SharedRegister register) {
    List<Manifest> manifests = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (ReleaseRecord release : register.releases()) {
      Read<Optional<Manifest>> read = ManifestFile.read(files, release.name());
      read.value().ifPresent(manifests::add);
      findings.addAll(read.findings());
      if (!same(files, release) && read.findings().isEmpty()) {
        findings.add(edited(release));
      }
    }
    return new Read<>(new Releases(manifests), findings);
  }

  private static boolean same(Files files, ReleaseRecord release) {
    return files
        .bytes(Manifest.file(release.name()))
        .map(Digest::of)
        .filter(release.manifest()::equals)
        .isPresent();
  }

  private static Finding edited(ReleaseRecord release) {
    return Finding.error(
        "release-edited",
        Span.of(Manifest.file(release.name())),
        "The manifest of release "
            + release.name()
            + " is missing or is not the one that was frozen on "
            + release.on()
            + ".",
        "Codes on paper are looked up in it.",
        "Take the file back from version control; freeze changes as a new release.");
  }

  /** The sheet with this code, in whichever release. */
  public Optional<Released> find(SheetCode code) {
    return manifests.stream()
        .flatMap(one -> one.sheet(code).map(sheet -> new Released(one, sheet)).stream())
        .findFirst();
  }

  /** The newest release that holds exactly the sheet that stands there now. */
  public Optional<Released> find(Standing standing) {
    return manifests.stream()
        .flatMap(
            one ->
                one
                    .sheet(standing.entry(), standing.language(), standing.digest())
                    .map(sheet -> new Released(one, sheet))
                    .stream())
        .reduce((older, newer) -> newer);
  }

  /** Every code that was ever given. */
  public Set<SheetCode> codes() {
    Set<SheetCode> codes = new TreeSet<>();
    manifests.forEach(one -> one.sheets().forEach(sheet -> codes.add(sheet.code())));
    return codes;
  }
}
