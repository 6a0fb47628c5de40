package goniograph.register;

import goniograph.source.Digest;
import goniograph.source.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Freezes releases into the files of a library.
 *
 * @param files the library
 * @param earlier the releases there are
 */
public record Releasing(Files files, Releases earlier) {
  private static final List<String> FOLDERS = List.of("content", "figures", "shared");
  private static final String MANIFESTS = "shared/releases/";

  /**
   * Freezes a release, see {@link Manifest#freeze}, and writes its manifest and then the register.
   *
   * @throws Refused where the name is no name or is taken, or nothing is ready
   */
  public Manifest freeze(
      String name,
      String by,
      LocalDate on,
      SortedMap<String, String> licences,
      List<Standing> standings,
      Set<String> faulty) {
    free(name);
    Manifest manifest =
        Manifest.freeze(name, by, on, licences, standings, faulty, earlier.codes(), digests());
    if (manifest.sheets().isEmpty()) {
      throw new Refused("Not released: no sheet is ready. " + firstReason(manifest));
    }
    byte[] bytes = ManifestFile.bytes(manifest);
    SharedRegister register = RegisterReader.shared(files).value();
    ReleaseRecord record = new ReleaseRecord(name, by, on, Digest.of(bytes));
    files.write(Manifest.file(name), bytes);
    files.write(RegisterReader.SHARED, RegisterWriter.bytes(register.withRelease(record)));
    return manifest;
  }

  private void free(String name) {
    RegisterFields.RELEASE.read(
        name,
        (rule, what, mend, grade, better) -> {
          throw new Refused(what + " " + mend);
        });
    if (earlier.manifests().stream().anyMatch(one -> one.name().equals(name))) {
      throw new Refused(
          "Release " + name + " is frozen and stays as it is. Give the new one another name.");
    }
  }

  private static String firstReason(Manifest manifest) {
    return manifest.leftOut().stream()
        .findFirst()
        .map(out -> "`" + out.entry() + "` in " + out.language() + ": " + out.because())
        .orElse("There is no entry.");
  }

  /** Digests of what sheets are made from; the register itself is not part of that. */
  private SortedMap<String, String> digests() {
    TreeMap<String, String> digests = new TreeMap<>();
    for (String folder : FOLDERS) {
      for (String path : files.list(folder)) {
        boolean own =
            path.equals(RegisterReader.SHARED)
                || path.startsWith(MANIFESTS)
                || path.endsWith("/register.yaml");
        if (!own) {
          files.bytes(path).map(Digest::of).ifPresent(digest -> digests.put(path, digest));
        }
      }
    }
    return digests;
  }
}
