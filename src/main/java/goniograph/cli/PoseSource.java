package goniograph.cli;

import goniograph.build.PhraseBooks;
import goniograph.check.rules.RuleBook;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.finding.Nearest;
import goniograph.language.Phrases;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Solved;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The poses that someone asks to see: those of a pose file, or the one of an exercise.
 *
 * @param files the library's files
 * @param what a pose file, or the id of an exercise
 */
record PoseSource(Files files, String what) {

  /**
   * A pose as it stands in its file now.
   *
   * @param solved empty where it has errors
   * @param findings what is wrong with it, as read and as solved
   */
  record Seen(List<Solved> solved, List<Finding> findings) {}

  /** The folder whose changes matter. */
  String folder() {
    int slash = what.lastIndexOf('/');
    return isFile() && slash > 0 ? what.substring(0, slash) : isFile() ? "" : "figures";
  }

  private boolean isFile() {
    return what.endsWith(".yaml");
  }

  /** Everything that the drawing depends on, for telling whether it has changed. */
  List<String> texts() {
    return files.list(folder()).stream()
        .filter(path -> path.endsWith(".yaml"))
        .flatMap(path -> files.text(path).stream())
        .map(file -> file.path() + "\n" + file.text())
        .toList();
  }

  /**
   * Reads and solves.
   *
   * @param only the id of the pose that is meant; "" for all of the file
   * @param as how each pose is changed before it is solved
   */
  Seen seen(String only, UnaryOperator<PoseFile> as) {
    SourceFile file = file();
    List<Finding> findings = new ArrayList<>();
    List<PoseFile> poses = PoseReader.read(file, Library.figures(files), findings::add);
    if (findings.stream().anyMatch(finding -> finding.level() == Level.ERROR)) {
      return new Seen(List.of(), findings);
    }
    List<Solved> solved = new ArrayList<>();
    for (PoseFile pose : chosen(poses, only, file)) {
      Solved one = PoseSolver.solve(as.apply(pose));
      findings.addAll(RuleBook.alone(pose, one));
      solved.add(one);
    }
    return new Seen(solved, findings);
  }

  private static List<PoseFile> chosen(List<PoseFile> poses, String only, SourceFile file) {
    List<PoseFile> chosen =
        poses.stream().filter(pose -> only.isEmpty() || pose.id().equals(only)).toList();
    if (chosen.isEmpty()) {
      String which = only.isEmpty() ? "no pose" : "no pose `" + only + "`";
      throw new Refusal(
          "There is "
              + which
              + " in "
              + file.path()
              + end(only, poses.stream().map(PoseFile::id).toList()));
    }
    return chosen;
  }

  /** The words for drawings in the language in which the library is written. */
  Optional<Phrases> phrases() {
    return PhraseBooks.of(Library.read(files).library()).in(Library.SOURCE_LANGUAGE);
  }

  private SourceFile file() {
    return isFile() ? poseFile() : figure();
  }

  private SourceFile poseFile() {
    try {
      return files
          .text(what)
          .orElseThrow(() -> new Refusal("There is no file `" + what + "` in the library."));
    } catch (IllegalArgumentException outside) {
      throw new Refusal(
          "`" + what + "` lies outside the library. Give a file in figures/, or --library DIR.");
    }
  }

  private SourceFile figure() {
    Library library = Library.read(files).library();
    List<String> ids = library.exercises().stream().map(Exercise::id).toList();
    Exercise exercise =
        library
            .exercise(what)
            .orElseThrow(() -> new Refusal("There is no exercise `" + what + "`" + end(what, ids)));
    return exercise
        .start()
        .conditions()
        .figure()
        .flatMap(figure -> library.figure(figure.value()))
        .orElseThrow(() -> new Refusal("`" + what + "` has no figure that could be read."));
  }

  /** The end of a sentence about a word that is not known. */
  static String end(String typed, List<String> known) {
    String hint = Nearest.hint(typed, known);
    return hint.isEmpty() ? "." : hint;
  }
}
