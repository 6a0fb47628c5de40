package goniograph.finding;

import goniograph.source.Files;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Applies the mends of findings to files, in memory. */
public final class Edits {
  private static final Comparator<Edit> PLACE =
      Comparator.comparingInt((Edit edit) -> edit.at().start())
          .thenComparingInt(edit -> edit.at().end());

  private Edits() {}

  /**
   * The files that change, as they would read. A mend is applied whole or not at all: one that
   * would touch what an earlier mend changed is left for the next time, so that no two mends meet.
   */
  public static Map<String, byte[]> applied(Files files, List<Finding> mends) {
    Map<String, List<Edit>> taken = new TreeMap<>();
    for (Finding mend : mends) {
      if (mend.edits().stream().allMatch(edit -> free(edit, taken))) {
        mend.edits()
            .forEach(
                edit -> taken.computeIfAbsent(edit.at().file(), f -> new ArrayList<>()).add(edit));
      }
    }
    Map<String, byte[]> changed = new TreeMap<>();
    taken.forEach(
        (path, edits) ->
            files.bytes(path).ifPresent(bytes -> changed.put(path, applied(bytes, edits))));
    return changed;
  }

  private static boolean free(Edit edit, Map<String, List<Edit>> taken) {
    return taken.getOrDefault(edit.at().file(), List.of()).stream()
        .noneMatch(other -> meet(edit, other));
  }

  private static boolean meet(Edit a, Edit b) {
    return a.at().start() <= b.at().end() && b.at().start() <= a.at().end();
  }

  private static byte[] applied(byte[] bytes, List<Edit> edits) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int from = 0;
    for (Edit edit : edits.stream().sorted(PLACE).toList()) {
      out.write(bytes, from, edit.at().start() - from);
      out.writeBytes(edit.text().getBytes(StandardCharsets.UTF_8));
      from = edit.at().end();
    }
    out.write(bytes, from, bytes.length - from);
    return out.toByteArray();
  }
}
