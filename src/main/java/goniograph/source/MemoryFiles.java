package goniograph.source;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Files kept in memory: the twin of {@link DiskFiles} for tests and previews. Safe to share between
 * threads.
 */
public final class MemoryFiles implements Files {
  private final Map<String, byte[]> files = new TreeMap<>();
  private long written;

  /** Adds a text file and returns this, for chains. */
  public MemoryFiles with(String path, String text) {
    write(path, text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  @Override
  public synchronized Optional<byte[]> bytes(String path) {
    return Optional.ofNullable(files.get(Paths.checked(path))).map(byte[]::clone);
  }

  @Override
  public synchronized List<String> list(String folder) {
    String prefix = folder.isEmpty() ? "" : Paths.checked(folder) + "/";
    return files.keySet().stream().filter(path -> path.startsWith(prefix)).toList();
  }

  @Override
  public synchronized void write(String path, byte[] bytes) {
    files.put(Paths.checked(path), bytes.clone());
    changed();
  }

  @Override
  public synchronized void delete(String path) {
    files.remove(Paths.checked(path));
    changed();
  }

  private void changed() {
    written++;
    notifyAll();
  }

  /** Told for every folder alike: who waits looks what it was. */
  @Override
  public synchronized Changes changes(String folder) {
    return new Waiting(written);
  }

  private synchronized long waited(long seen) throws InterruptedException {
    while (written == seen) {
      wait();
    }
    return written;
  }

  /** Changes since the last one seen. */
  private final class Waiting implements Changes {
    private long seen;

    Waiting(long seen) {
      this.seen = seen;
    }

    @Override
    public boolean await() {
      try {
        seen = waited(seen);
        return true;
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return false;
      }
    }

    @Override
    public void close() {}
  }
}
