package goniograph.check;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Library;
import goniograph.library.Rung;
import goniograph.matter.Located;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Solved;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The poses of a library, read and solved once. A file that has errors is not solved: what is
 * misread in it would raise further findings that say nothing new.
 *
 * @param files the poses by the name of their file
 * @param solved the solved poses by the name of their file
 * @param findings what reading them found
 */
public record Poses(
    SortedMap<String, PoseFile> files, SortedMap<String, Solved> solved, List<Finding> findings)
    implements StepFacts {
  /** No poses. */
  public static final Poses NONE = new Poses(new TreeMap<>(), new TreeMap<>(), List.of());

  public Poses {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    solved = Collections.unmodifiableSortedMap(new TreeMap<>(solved));
    findings = List.copyOf(findings);
  }

  /** Reads and solves all pose files of a library. */
  public static Poses of(Library library) {
    SortedMap<String, PoseFile> files = new TreeMap<>();
    SortedMap<String, Solved> solved = new TreeMap<>();
    List<Finding> all = new ArrayList<>();
    library
        .figures()
        .forEach(
            (id, file) -> {
              List<Finding> own = new ArrayList<>();
              read(id, file, library, own).ifPresent(pose -> files.put(id, pose));
              boolean whole = own.stream().noneMatch(one -> one.level() == Level.ERROR);
              if (whole && files.containsKey(id)) {
                solved.put(id, PoseSolver.solve(files.get(id)));
              }
              all.addAll(own);
            });
    return new Poses(files, solved, all);
  }

  private static Optional<PoseFile> read(
      String id, SourceFile file, Library library, List<Finding> findings) {
    List<PoseFile> poses = PoseReader.read(file, library.figures(), findings::add);
    Optional<PoseFile> named = poses.stream().filter(pose -> pose.id().equals(id)).findFirst();
    if (named.isEmpty() && !poses.isEmpty()) {
      findings.add(
          Finding.error(
              "pose-name",
              poses.get(0).at(),
              "The pose `" + poses.get(0).id() + "` stands in the file `" + id + ".yaml`.",
              "One thing with two names is looked up under the wrong one.",
              "Write `pose: " + id + "`, or rename the file."));
    }
    return named;
  }

  @Override
  public Optional<Solved> solved(Rung rung) {
    return rung.conditions()
        .figure()
        .map(Located::value)
        .flatMap(id -> Optional.ofNullable(solved.get(id)));
  }
}
