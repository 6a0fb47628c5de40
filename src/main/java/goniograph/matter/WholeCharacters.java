package goniograph.matter;

import java.io.Reader;

/**
 * A text handed out without ever splitting a surrogate pair: the YAML engine's buffer overflows
 * where a chunk ends between the two halves of one.
 */
final class WholeCharacters extends Reader {
  private final String text;
  private int at;

  WholeCharacters(String text) {
    this.text = text;
  }

  @Override
  public int read(char[] into, int offset, int length) {
    int count = Math.min(length, text.length() - at);
    if (count > 1 && Character.isHighSurrogate(text.charAt(at + count - 1))) {
      count--;
    }
    text.getChars(at, at + count, into, offset);
    at += count;
    return count == 0 ? -1 : count;
  }

  @Override
  public void close() {
    // nothing is held open
  }
}
