package goniograph.exchange;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What would change in a text file, as a unified difference. */
public final class Difference {
  private static final int AROUND = 1;

  private Difference() {}

  /** The difference, every line ending with a line feed; "" where nothing differs. */
  public static String of(String path, byte[] before, byte[] after) {
    List<String> old = lines(before);
    List<String> lines =
        UnifiedDiffUtils.generateUnifiedDiff(
            path, path, old, DiffUtils.diff(old, lines(after)), AROUND);
    return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
  }

  private static List<String> lines(byte[] text) {
    return new String(text, StandardCharsets.UTF_8).lines().toList();
  }
}
