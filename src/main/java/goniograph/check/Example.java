package goniograph.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A passage of one file of the example library, once as it should be and once as it should not. The
 * bad passage holds the place of its one finding between {@code «} and {@code »}, or only its
 * beginning.
 *
 * @param file the file of the example library it stands in
 * @param replaces what stands there in the example library, exactly once
 * @param good a passage that the rule is silent about
 * @param marked a passage that the rule finds, with its marks
 * @param setting what else is different in the example library, for both passages
 * @param alongside what else is different beside the bad passage alone, so that only one thing is
 *     wrong
 */
public record Example(
    String file,
    String replaces,
    String good,
    String marked,
    List<Edit> setting,
    List<Edit> alongside) {
  private static final String OPEN = "«";
  private static final String CLOSE = "»";

  public Example {
    setting = List.copyOf(setting);
    alongside = List.copyOf(alongside);
  }

  /**
   * One change to a file of the example library.
   *
   * @param from what stands there, exactly once; "" for a file that is not there yet
   */
  public record Edit(String file, String from, String to) {
    /** In the place of a passage: the whole file. With nothing in its place the file goes. */
    public static final String WHOLE = "*";

    /** Whether it changes something. */
    public boolean changes() {
      return !from.equals(to);
    }
  }

  /** An example whose good passage stands in the example library as it is. */
  public static Example in(String file, String good, String marked) {
    return new Example(file, good, good, marked, List.of(), List.of());
  }

  /** The same passages in the place of another. */
  public Example insteadOf(String passage) {
    return new Example(file, passage, good, marked, setting, alongside);
  }

  /** The same with one more change to the example library. */
  public Example where(String changed, String from, String to) {
    return new Example(
        file, replaces, good, marked, and(setting, new Edit(changed, from, to)), alongside);
  }

  /** The same with one more change beside the bad passage. */
  public Example alongside(String changed, String from, String to) {
    return new Example(
        file, replaces, good, marked, setting, and(alongside, new Edit(changed, from, to)));
  }

  private static List<Edit> and(List<Edit> edits, Edit more) {
    return Stream.concat(edits.stream(), Stream.of(more)).toList();
  }

  /** The bad passage without its marks. */
  public String bad() {
    return marked.replace(OPEN, "").replace(CLOSE, "");
  }

  /** Index in the bad passage where its finding begins. */
  public int start() {
    return marked.indexOf(OPEN);
  }

  /**
   * Index in the bad passage where its finding ends; negative where only the beginning is marked.
   */
  public int end() {
    return marked.indexOf(CLOSE) - OPEN.length();
  }

  /** The changes that make the example library hold the good passage. */
  public List<Edit> goodEdits() {
    return edits(good, List.of());
  }

  /** The changes that make the example library hold the bad passage. */
  public List<Edit> badEdits() {
    return edits(bad(), alongside);
  }

  private List<Edit> edits(String passage, List<Edit> more) {
    List<Edit> all = new ArrayList<>(setting);
    all.add(new Edit(file, replaces, passage));
    all.addAll(more);
    return all.stream().filter(Edit::changes).toList();
  }
}
