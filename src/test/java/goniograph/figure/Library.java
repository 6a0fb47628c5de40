package goniograph.figure;

import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Scene;
import goniograph.source.DiskFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Scenes solved from pose files, for tests that hold for every pose. */
final class Library {
  private Library() {}

  /** The poses the method was tried on, those of the library, and one for each mark. */
  static List<Scene> scenes() {
    List<Scene> scenes = new ArrayList<>();
    for (String folder : List.of("figures", "src/test/resources/goniograph/pose")) {
      DiskFiles files = DiskFiles.at(Path.of(folder));
      for (String name : files.list("")) {
        if (folder.equals("figures") || name.matches("trial-poses.yaml|marks.yaml")) {
          files.text(name).ifPresent(file -> scenes.addAll(scenes(file)));
        }
      }
    }
    return scenes;
  }

  static Scene scene(String yaml) {
    return scenes(SourceFile.of("figures/test.yaml", yaml)).get(0);
  }

  private static List<Scene> scenes(SourceFile file) {
    List<PoseFile> poses =
        PoseReader.read(
            file,
            finding -> {
              throw new AssertionError(finding.toString());
            });
    return poses.stream().map(pose -> PoseSolver.solve(pose).scene()).toList();
  }
}
