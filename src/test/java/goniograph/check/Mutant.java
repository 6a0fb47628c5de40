package goniograph.check;

import goniograph.finding.Finding;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One mistake put into one file by machine.
 *
 * @param kind what sort of mistake
 * @param entry id of the entry
 * @param path the changed file
 * @param text its new text
 * @param line the changed line
 * @param was what stood there
 * @param is what stands there now
 * @param words what a finding may call the place, beside giving its line
 */
record Mutant(
    Kind kind,
    String entry,
    String path,
    String text,
    int line,
    String was,
    String is,
    List<String> words) {

  /** The sorts of mistakes. */
  enum Kind {
    STATEMENT,
    UNIT,
    TEN,
    POSE_SIDE,
    TEXT_SIDE,
    SUPPORT,
    EMERGENCY
  }

  String name() {
    return kind + " " + path + ":" + line + " `" + was + "` -> `" + is + "`";
  }

  Map<String, String> changed() {
    return Map.of(path, text);
  }

  /**
   * Whether a finding names the changed file at the changed place: by its line, or in words. What
   * was taken out has no line of its own any more.
   */
  boolean named(Finding one) {
    boolean from = one.at().line() <= line && line <= one.at().endLine();
    boolean told =
        Stream.concat(words.stream(), Stream.of("line " + line))
            .anyMatch(word -> one.because().contains(word) || one.what().contains(word));
    return one.at().file().equals(path) ? from || told : one.because().contains(path);
  }
}
