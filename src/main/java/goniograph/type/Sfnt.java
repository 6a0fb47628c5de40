package goniograph.type;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * The tables of a TrueType font file with quadratic outlines, read by name (ISO/IEC 14496-22, the
 * OpenType specification). All values are in font units, big endian; no method changes anything.
 */
public final class Sfnt {
  private final ByteBuffer bytes;
  private final Map<String, ByteBuffer> tables = new TreeMap<>();
  private final ByteBuffer loca;
  private final ByteBuffer glyf;
  private final boolean longOffsets;

  Sfnt(byte[] file) {
    bytes = ByteBuffer.wrap(file).asReadOnlyBuffer();
    int count = bytes.getShort(4);
    for (int i = 0; i < count; i++) {
      int entry = 12 + 16 * i;
      byte[] tag = new byte[4];
      bytes.get(entry, tag);
      tables.put(
          new String(tag, StandardCharsets.US_ASCII),
          bytes.slice(bytes.getInt(entry + 8), bytes.getInt(entry + 12)));
    }
    loca = table("loca");
    glyf = table("glyf");
    longOffsets = table("head").getShort(50) != 0;
  }

  /** True where the font has the table. */
  public boolean has(String tag) {
    return tables.containsKey(tag);
  }

  /** A table as a read-only view from its first byte; an empty one where the font lacks it. */
  public ByteBuffer table(String tag) {
    ByteBuffer table = tables.get(tag);
    return table == null ? ByteBuffer.allocate(0) : table.duplicate();
  }

  /** Font units to the em. */
  public int unitsPerEm() {
    return table("head").getShort(18);
  }

  /** How many glyphs the font has. */
  public int glyphCount() {
    return Short.toUnsignedInt(table("maxp").getShort(4));
  }

  /** The outline of a glyph as it stands in the {@code glyf} table; empty for a blank glyph. */
  public ByteBuffer glyph(int glyph) {
    int from = offset(glyph);
    return glyf.slice(from, offset(glyph + 1) - from);
  }

  /** How far a glyph moves the pen. */
  public int advance(int glyph) {
    int last = Short.toUnsignedInt(table("hhea").getShort(34)) - 1;
    return Short.toUnsignedInt(table("hmtx").getShort(4 * Math.min(glyph, last)));
  }

  private int offset(int glyph) {
    return longOffsets ? loca.getInt(4 * glyph) : 2 * Short.toUnsignedInt(loca.getShort(2 * glyph));
  }

  /** The value of a signed 16-bit field. */
  public int signed(String tag, int offset) {
    return table(tag).getShort(offset);
  }
}
