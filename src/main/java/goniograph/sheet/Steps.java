package goniograph.sheet;

import java.util.List;

/**
 * What to do.
 *
 * @param label the block's name
 * @param items the steps and the care lines among them, in order
 * @param careLabel for instance "Take care"
 * @param care care lines that the author placed nowhere; they stand after the steps
 */
public record Steps(String label, List<Item> items, String careLabel, List<String> care) {
  public Steps {
    items = List.copyOf(items);
    care = List.copyOf(care);
  }

  /** A line of the list. */
  public sealed interface Item {
    String words();
  }

  /** A numbered step. */
  public record Step(int number, String words) implements Item {}

  /** A care line among the steps: no step of its own. */
  public record CareLine(String words) implements Item {}
}
