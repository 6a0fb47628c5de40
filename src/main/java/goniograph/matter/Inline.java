package goniograph.matter;

import goniograph.source.Span;
import java.util.List;

/** A part of a piece of text. */
public sealed interface Inline {
  /** Where it stands. */
  Span at();

  /** Words as they are printed, escapes resolved; a line end of the source is one space. */
  record Words(String text, Span at) implements Inline {}

  /** A slot {@code {name}}; the place includes the braces. */
  record Slot(String name, Span at) implements Inline {}

  /** The mark {@code [id]} that names the evidence of the sentence before it; never printed. */
  record Claim(String id, Span at) implements Inline {}

  /** Stressed words; strong or plain emphasis. */
  record Stress(boolean strong, List<Inline> parts, Span at) implements Inline {
    public Stress {
      parts = List.copyOf(parts);
    }
  }
}
