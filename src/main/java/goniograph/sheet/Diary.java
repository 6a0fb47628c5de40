package goniograph.sheet;

import java.util.List;

/**
 * Four weeks to mark by hand.
 *
 * @param label for instance "My four weeks"
 * @param weekLabel what stands above the week numbers
 * @param days seven short day names in the order of the language
 * @param weeks the weeks' numbers as printed
 * @param sessions for each day the number of rings, 0 for a day of rest
 * @param hardLabel label of "how hard"
 * @param soreLabel label of "sore next morning"
 * @param soreAnswers the answers to tick
 * @param question label of the line for a question
 */
public record Diary(
    String label,
    String weekLabel,
    List<String> days,
    List<String> weeks,
    List<Integer> sessions,
    String hardLabel,
    String soreLabel,
    List<String> soreAnswers,
    String question) {
  public Diary {
    days = List.copyOf(days);
    weeks = List.copyOf(weeks);
    sessions = List.copyOf(sessions);
    soreAnswers = List.copyOf(soreAnswers);
  }
}
