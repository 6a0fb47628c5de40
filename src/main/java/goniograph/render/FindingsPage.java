package goniograph.render;

import java.util.List;
import java.util.Map;

/**
 * Findings as a page to print, for those who decide about the content.
 *
 * @param today the day that counted as today
 * @param summary how much was found, in words
 * @param groups the findings by sheet
 */
public record FindingsPage(String today, String summary, List<Group> groups) {
  public FindingsPage {
    groups = List.copyOf(groups);
  }

  /**
   * What was found about one entry, or about what all share.
   *
   * @param anchor an id that only this group has on the page
   * @param title its heading
   * @param parts the findings by level, gravest first, the accepted ones last
   */
  public record Group(String anchor, String title, List<Part> parts) {
    public Group {
      parts = List.copyOf(parts);
    }
  }

  /** Findings under one heading. */
  public record Part(String heading, List<Item> items) {
    public Part {
      items = List.copyOf(items);
    }
  }

  /**
   * One finding.
   *
   * @param what what is wrong
   * @param lines what else is to be said about it, each with its label
   */
  public record Item(String what, List<Line> lines) {
    public Item {
      lines = List.copyOf(lines);
    }
  }

  /** A label and what stands behind it. */
  public record Line(String label, String text) {}

  /** The page as HTML; the same page gives the same bytes. */
  public String html() {
    return Templates.fill(
        "findings/findings.jte", Map.of("page", this, "style", Templates.style("findings.css")));
  }
}
