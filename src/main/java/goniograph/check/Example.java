package goniograph.check;

import java.util.ArrayList;
import java.util.List;

/**
 * A passage of one file of the example library, once as it should be and once as it should not. The
 * bad passage holds the place of its one finding between {@code «} and {@code »}; where only the
 * beginning is marked, the finding ends behind the passage.
 *
 * @param file the file of the example library it stands in
 * @param replaces what stands there in the example library, exactly once
 * @param good a passage that the rule is silent about
 * @param marked a passage that the rule finds, with its marks
 * @param setting what else is different in the example library, for both passages
 */
public record Example(
    String file, String replaces, String good, String marked, List<Edit> setting) {
  private static final String OPEN = "«";
  private static final String CLOSE = "»";

  public Example {
    setting = List.copyOf(setting);
  }

  /**
   * One change to a file of the example library.
   *
   * @param from what stands there, exactly once; "" for a file that is not there yet
   */
  public record Edit(String file, String from, String to) {}

  /** An example whose good passage stands in the example library as it is. */
  public static Example in(String file, String good, String marked) {
    return new Example(file, good, good, marked, List.of());
  }

  /** The same passages in the place of another. */
  public Example insteadOf(String passage) {
    return new Example(file, passage, good, marked, setting);
  }

  /** The same with one more change to the example library. */
  public Example where(String changed, String from, String to) {
    List<Edit> more = new ArrayList<>(setting);
    more.add(new Edit(changed, from, to));
    return new Example(file, replaces, good, marked, more);
  }

  /** The bad passage without its marks. */
  public String bad() {
    return marked.replace(OPEN, "").replace(CLOSE, "");
  }

  /** Index in the bad passage where its finding begins. */
  public int start() {
    return marked.indexOf(OPEN);
  }

  /** Index in the bad passage where its finding ends. */
  public int end() {
    return marked.indexOf(CLOSE) - OPEN.length();
  }

  /** The changes that make the example library hold the good passage. */
  public List<Edit> goodEdits() {
    return edits(good);
  }

  /** The changes that make the example library hold the bad passage. */
  public List<Edit> badEdits() {
    return edits(bad());
  }

  private List<Edit> edits(String passage) {
    List<Edit> all = new ArrayList<>(setting);
    all.add(new Edit(file, replaces, passage));
    return List.copyOf(all);
  }
}
