package goniograph.check;

import java.util.List;

/**
 * What a rule documents; everything must be said.
 *
 * @param name its readable name, for instance {@code dose-limit}
 * @param what what it finds, in one or two sentences
 * @param why why it matters to a patient or reader
 * @param source the published source, or "Common practice, no source", or "A rule of the house"
 * @param acceptance who may let its findings stand
 * @param examples at least one good passage beside a bad one
 */
public record RulePage(
    String name,
    String what,
    String why,
    String source,
    Acceptance acceptance,
    List<Example> examples) {
  /** The source of a rule about form. */
  public static final String HOUSE = "A rule of the house";

  /** The source of a rule that everybody follows and nobody has published. */
  public static final String PRACTICE = "Common practice, no source";

  public RulePage {
    examples = List.copyOf(examples);
  }

  /** A page with these examples. */
  public static RulePage of(
      String name,
      String what,
      String why,
      String source,
      Acceptance acceptance,
      Example... examples) {
    return new RulePage(name, what, why, source, acceptance, List.of(examples));
  }
}
