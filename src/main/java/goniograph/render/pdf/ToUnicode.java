package goniograph.render.pdf;

import goniograph.type.Cluster;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** The map from a cluster font's codes back to the source text (ISO 32000-1, 9.10.3). */
final class ToUnicode {
  /** The most entries one block of a CMap may hold. */
  private static final int BLOCK = 100;

  private ToUnicode() {}

  /** The map's text for the clusters, whose codes are 1, 2, 3 and so on. */
  static byte[] of(List<Cluster> clusters) {
    StringBuilder map = new StringBuilder();
    map.append(
        """
        /CIDInit /ProcSet findresource begin
        12 dict begin
        begincmap
        /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
        /CMapName /Adobe-Identity-UCS def
        /CMapType 2 def
        1 begincodespacerange
        <0000> <FFFF>
        endcodespacerange
        """);
    for (int from = 0; from < clusters.size(); from += BLOCK) {
      block(map, clusters, from, Math.min(from + BLOCK, clusters.size()));
    }
    map.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
    return map.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static void block(StringBuilder map, List<Cluster> clusters, int from, int to) {
    map.append(to - from).append(" beginbfchar\n");
    for (int i = from; i < to; i++) {
      map.append(String.format(Locale.ROOT, "<%04X> <%s>\n", i + 1, hex(text(clusters.get(i)))));
    }
    map.append("endbfchar\n");
  }

  private static String hex(String text) {
    return HexFormat.of().withUpperCase().formatHex(text.getBytes(StandardCharsets.UTF_16BE));
  }

  /**
   * The text as extractors want it. They turn a right-to-left line round character by character, so
   * a code of several characters has to hold them turned round already.
   */
  private static String text(Cluster cluster) {
    return cluster.rightToLeft()
        ? new StringBuilder(cluster.text()).reverse().toString()
        : cluster.text();
  }
}
