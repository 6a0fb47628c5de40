package goniograph.render.pdf;

import goniograph.type.Cluster;
import goniograph.type.Face;
import goniograph.type.PlacedGlyph;
import goniograph.type.Sfnt;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A TrueType font whose glyph 0 is the face's own, whose glyphs 1, 2, 3 … are the clusters, and
 * whose glyphs behind them are the parts the clusters are put together from (OpenType
 * specification, {@code glyf}: simple and composite glyphs).
 */
final class FontProgram {
  private static final int WORDS = 1;
  private static final int XY_VALUES = 2;
  private static final int SCALE = 0x8;
  private static final int MORE = 0x20;
  private static final int XY_SCALE = 0x40;
  private static final int TWO_BY_TWO = 0x80;
  private static final int HEADER = 10;
  private static final int CHECKSUM_BASE = 0xB1B0AFBA;

  private final Sfnt sfnt;
  private final List<Cluster> clusters;

  /** Number in the face and number here of each part, in the order in which they came up. */
  private final Map<Integer, Integer> parts = new LinkedHashMap<>();

  private final List<Integer> pending = new ArrayList<>();
  private final List<byte[]> glyphs = new ArrayList<>();
  private int mostComponents = 1;

  FontProgram(Face face, List<Cluster> clusters) {
    sfnt = face.sfnt();
    this.clusters = clusters;
  }

  byte[] bytes() {
    glyphs.add(renumbered(0));
    for (Cluster cluster : clusters) {
      glyphs.add(outline(cluster.glyphs()));
    }
    for (int i = 0; i < pending.size(); i++) {
      glyphs.add(renumbered(pending.get(i)));
    }
    return file(tables());
  }

  private byte[] outline(List<PlacedGlyph> placed) {
    if (placed.isEmpty()) {
      return new byte[0];
    }
    PlacedGlyph only = placed.get(0);
    boolean plain = placed.size() == 1 && rounded(only.x()) == 0 && rounded(only.y()) == 0;
    return plain ? renumbered(only.glyph()) : composite(placed);
  }

  private byte[] composite(List<PlacedGlyph> placed) {
    mostComponents = Math.max(mostComponents, placed.size());
    ByteBuffer out = ByteBuffer.allocate(HEADER + 8 * placed.size());
    out.putShort((short) -1);
    for (int edge : bounds(placed)) {
      out.putShort((short) edge);
    }
    for (int i = 0; i < placed.size(); i++) {
      PlacedGlyph glyph = placed.get(i);
      int more = i + 1 < placed.size() ? MORE : 0;
      out.putShort((short) (WORDS | XY_VALUES | more));
      out.putShort((short) part(glyph.glyph()));
      out.putShort((short) rounded(glyph.x()));
      out.putShort((short) rounded(glyph.y()));
    }
    return out.array();
  }

  private int[] bounds(List<PlacedGlyph> placed) {
    int[] all = {Short.MAX_VALUE, Short.MAX_VALUE, Short.MIN_VALUE, Short.MIN_VALUE};
    for (PlacedGlyph glyph : placed) {
      ByteBuffer outline = sfnt.glyph(glyph.glyph());
      int x = rounded(glyph.x());
      int y = rounded(glyph.y());
      all[0] = Math.min(all[0], outline.getShort(2) + x);
      all[1] = Math.min(all[1], outline.getShort(4) + y);
      all[2] = Math.max(all[2], outline.getShort(6) + x);
      all[3] = Math.max(all[3], outline.getShort(8) + y);
    }
    return all;
  }

  private static int rounded(double length) {
    return (int) Math.round(length);
  }

  /** The number here of a glyph of the face, which is put in line if it is new. */
  private int part(int glyph) {
    return parts.computeIfAbsent(
        glyph,
        g -> {
          pending.add(g);
          return clusters.size() + pending.size();
        });
  }

  /** A glyph of the face with the glyphs it is composed of numbered anew. */
  private byte[] renumbered(int glyph) {
    ByteBuffer source = sfnt.glyph(glyph);
    byte[] outline = new byte[source.limit()];
    source.get(outline);
    if (outline.length > 0 && source.getShort(0) < 0) {
      renumber(ByteBuffer.wrap(outline));
    }
    return outline;
  }

  private void renumber(ByteBuffer composite) {
    int at = HEADER;
    int flags;
    int components = 0;
    do {
      flags = composite.getShort(at);
      int old = Short.toUnsignedInt(composite.getShort(at + 2));
      composite.putShort(at + 2, (short) part(old));
      at += 4 + placeLength(flags);
      components++;
    } while ((flags & MORE) != 0);
    mostComponents = Math.max(mostComponents, components);
  }

  private static int placeLength(int flags) {
    int length = (flags & WORDS) != 0 ? 4 : 2;
    if ((flags & SCALE) != 0) {
      return length + 2;
    }
    if ((flags & XY_SCALE) != 0) {
      return length + 4;
    }
    return (flags & TWO_BY_TWO) != 0 ? length + 8 : length;
  }

  private Map<String, byte[]> tables() {
    Map<String, byte[]> tables = new TreeMap<>();
    for (String kept : List.of("cvt ", "fpgm", "prep")) {
      if (sfnt.has(kept)) {
        tables.put(kept, copy(kept));
      }
    }
    ByteArrayOutputStream glyf = new ByteArrayOutputStream();
    ByteBuffer loca = ByteBuffer.allocate(4 * glyphs.size() + 4);
    for (byte[] glyph : glyphs) {
      loca.putInt(glyf.size());
      glyf.writeBytes(glyph);
      glyf.writeBytes(new byte[-glyph.length & 3]);
    }
    loca.putInt(glyf.size());
    tables.put("glyf", glyf.toByteArray());
    tables.put("loca", loca.array());
    tables.put("hmtx", metrics());
    tables.put("head", head());
    tables.put("hhea", changed("hhea", 34, glyphs.size()));
    tables.put("maxp", maximums());
    return tables;
  }

  private byte[] copy(String tag) {
    ByteBuffer table = sfnt.table(tag);
    byte[] bytes = new byte[table.limit()];
    table.get(bytes);
    return bytes;
  }

  private byte[] changed(String tag, int offset, int value) {
    byte[] table = copy(tag);
    ByteBuffer.wrap(table).putShort(offset, (short) value);
    return table;
  }

  /** Offsets of four bytes, no checksum yet. */
  private byte[] head() {
    byte[] head = changed("head", 50, 1);
    ByteBuffer.wrap(head).putInt(8, 0);
    return head;
  }

  /** Room for one more level of composition than the face has of itself. */
  private byte[] maximums() {
    byte[] table = changed("maxp", 4, glyphs.size());
    ByteBuffer maximums = ByteBuffer.wrap(table);
    maximums.putShort(10, (short) (maximums.getShort(6) * (mostComponents + 1)));
    maximums.putShort(12, (short) (maximums.getShort(8) * (mostComponents + 1)));
    maximums.putShort(28, (short) Math.max(maximums.getShort(28), mostComponents));
    maximums.putShort(30, (short) (maximums.getShort(30) + 1));
    return table;
  }

  private byte[] metrics() {
    ByteBuffer metrics = ByteBuffer.allocate(4 * glyphs.size());
    for (int i = 0; i < glyphs.size(); i++) {
      byte[] glyph = glyphs.get(i);
      boolean cluster = i >= 1 && i <= clusters.size();
      metrics.putShort((short) (cluster ? rounded(clusters.get(i - 1).advance()) : partWidth(i)));
      metrics.putShort(glyph.length == 0 ? 0 : ByteBuffer.wrap(glyph).getShort(2));
    }
    return metrics.array();
  }

  private int partWidth(int index) {
    int glyph = index == 0 ? 0 : pending.get(index - 1 - clusters.size());
    return sfnt.advance(glyph);
  }

  private static byte[] file(Map<String, byte[]> tables) {
    int start = 12 + 16 * tables.size();
    int length = start;
    for (byte[] table : tables.values()) {
      length += padded(table.length);
    }
    ByteBuffer file = ByteBuffer.allocate(length);
    int largest = Integer.highestOneBit(tables.size());
    file.putInt(0x00010000).putShort((short) tables.size());
    file.putShort((short) (16 * largest));
    file.putShort((short) Integer.numberOfTrailingZeros(largest));
    file.putShort((short) (16 * (tables.size() - largest)));
    int at = start;
    int head = 0;
    for (var table : tables.entrySet()) {
      head = table.getKey().equals("head") ? at : head;
      file.put(at, table.getValue());
      file.put(table.getKey().getBytes(StandardCharsets.US_ASCII));
      int size = padded(table.getValue().length);
      file.putInt(checksum(file, at, size)).putInt(at).putInt(table.getValue().length);
      at += size;
    }
    file.putInt(head + 8, CHECKSUM_BASE - checksum(file, 0, length));
    return file.array();
  }

  private static int padded(int length) {
    return length + 3 & ~3;
  }

  private static int checksum(ByteBuffer file, int from, int length) {
    int sum = 0;
    for (int i = from; i < from + length; i += 4) {
      sum += file.getInt(i);
    }
    return sum;
  }
}
