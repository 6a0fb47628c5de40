package goniograph.source;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Files kept in memory: the twin of {@link DiskFiles} for tests and previews. */
public final class MemoryFiles implements Files {
  private final Map<String, byte[]> files = new TreeMap<>();

  /** Adds a text file and returns this, for chains. */
  public MemoryFiles with(String path, String text) {
    write(path, text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  @Override
  public Optional<byte[]> bytes(String path) {
    return Optional.ofNullable(files.get(Paths.checked(path))).map(byte[]::clone);
  }

  @Override
  public List<String> list(String folder) {
    String prefix = folder.isEmpty() ? "" : Paths.checked(folder) + "/";
    return files.keySet().stream().filter(path -> path.startsWith(prefix)).toList();
  }

  @Override
  public void write(String path, byte[] bytes) {
    files.put(Paths.checked(path), bytes.clone());
  }

  @Override
  public void delete(String path) {
    files.remove(Paths.checked(path));
  }
}
