package goniograph.sheet;

import java.util.List;

/**
 * Several lines under one label.
 *
 * @param label for instance "Take care"
 * @param lines the lines
 */
public record LabelledLines(String label, List<String> lines) {
  public LabelledLines {
    lines = List.copyOf(lines);
  }
}
