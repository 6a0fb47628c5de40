package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.finding.Finding;
import goniograph.source.DiskFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Poses for tests. */
final class Poses {
  private Poses() {}

  /** A pose of the demo library. */
  static PoseFile demo(String id) {
    return one(read(DiskFiles.at(Path.of("figures")), id + ".yaml"));
  }

  static List<PoseFile> demos() {
    return List.of(demo("hp-chair-rise"), demo("ba-heel-toe-stand"), demo("sh-row-band"));
  }

  /** The poses the method was tried on. */
  static List<PoseFile> trials() {
    return samples("trial-poses");
  }

  /** A file of samples. */
  static List<PoseFile> samples(String name) {
    return clean(read(DiskFiles.at(Path.of("src/test/resources/goniograph/pose")), name + ".yaml"));
  }

  /** Every pose there is: the library's, the method's, one for each base, contact and support. */
  static List<PoseFile> all() {
    List<PoseFile> all = new ArrayList<>(library());
    for (String name : List.of("trial-poses", "base-postures", "contacts", "supports", "props")) {
      all.addAll(samples(name));
    }
    return all;
  }

  private static List<PoseFile> library() {
    DiskFiles figures = DiskFiles.at(Path.of("figures"));
    return figures.list("").stream()
        .filter(path -> path.endsWith(".yaml"))
        .flatMap(path -> clean(read(figures, path)).stream())
        .toList();
  }

  /** The poses of a sample file among the test's resources. */
  static List<PoseFile> sample(String name) {
    return clean(read(DiskFiles.at(Path.of("src/test/resources/goniograph/pose")), name));
  }

  static PoseFile trial(String id) {
    return trials().stream().filter(pose -> pose.id().equals(id)).findFirst().orElseThrow();
  }

  /** A pose written in a test. */
  static PoseFile of(String yaml) {
    return one(SourceFile.of("figures/test.yaml", yaml));
  }

  /** What is found in a pose written in a test. */
  static List<Finding> findings(String yaml) {
    List<Finding> findings = new ArrayList<>();
    PoseReader.read(SourceFile.of("figures/test.yaml", yaml), findings::add);
    return findings;
  }

  private static SourceFile read(DiskFiles files, String path) {
    return files.text(path).orElseThrow();
  }

  private static PoseFile one(SourceFile file) {
    return clean(file).get(0);
  }

  private static List<PoseFile> clean(SourceFile file) {
    List<Finding> findings = new ArrayList<>();
    List<PoseFile> poses = PoseReader.read(file, findings::add);
    assertEquals(List.of(), findings);
    return poses;
  }
}
