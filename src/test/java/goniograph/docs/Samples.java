package goniograph.docs;

import goniograph.finding.Finding;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.source.DiskFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Poses that show something: those of the tests' samples, and those written for the guide. */
final class Samples {
  private static final DiskFiles FILES =
      DiskFiles.at(Path.of("src/test/resources/goniograph/pose"));
  private static final String BREAK = "\n---\n";

  /** A pose with its text. */
  record Sample(PoseFile pose, String text) {
    /** The lines of these keys, as they are typed. */
    String lines(String... keys) {
      List<String> lines = new ArrayList<>();
      for (String key : keys) {
        text.lines().filter(line -> line.startsWith(key + ":")).forEach(lines::add);
      }
      return "`" + String.join("`<br>`", lines) + "`";
    }
  }

  private final TreeMap<String, SourceFile> written = new TreeMap<>();

  /** The first sample of a file that shows what is asked for. */
  static Sample first(String file, String what, Predicate<PoseFile> shows) {
    for (String text : text(file).split(BREAK)) {
      PoseFile pose = read(SourceFile.of(file, text), new TreeMap<>(), new ArrayList<>()).get(0);
      if (shows.test(pose)) {
        return new Sample(pose, text);
      }
    }
    throw new AssertionError(file + " shows no " + what + ": add a pose to it");
  }

  private static String text(String file) {
    return FILES.text(file).orElseThrow().text();
  }

  /** A pose of the guide, on which later ones may build. */
  PoseFile of(String text) {
    List<Finding> findings = new ArrayList<>();
    SourceFile file = SourceFile.of("guide", text);
    PoseFile pose = read(file, written, findings).get(0);
    if (!findings.isEmpty()) {
      throw new AssertionError(text + findings);
    }
    written.put(pose.id(), file);
    return pose;
  }

  /** What is found in a pose of the guide. */
  static List<Finding> findings(String text) {
    List<Finding> findings = new ArrayList<>();
    List<PoseFile> poses = read(SourceFile.of("pose", text), new TreeMap<>(), findings);
    Map<String, PoseFile> byId = new LinkedHashMap<>();
    poses.forEach(pose -> byId.put(pose.id(), pose));
    if (findings.isEmpty()) {
      byId.values()
          .forEach(
              pose ->
                  findings.addAll(
                      goniograph.check.rules.RuleBook.alone(
                          pose, goniograph.pose.PoseSolver.solve(pose))));
    }
    return findings;
  }

  private static List<PoseFile> read(
      SourceFile file, TreeMap<String, SourceFile> others, List<Finding> findings) {
    return PoseReader.read(file, others, findings::add);
  }
}
