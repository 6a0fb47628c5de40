package goniograph.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Changes as the operating system tells them. */
final class DiskChanges implements Changes {
  /** A file that an editor writes in steps is whole after this. */
  private static final long STILL_MILLISECONDS = 60;

  private final WatchService watch;

  DiskChanges(Path folder) {
    try {
      watch = folder.getFileSystem().newWatchService();
      folder.register(
          watch,
          StandardWatchEventKinds.ENTRY_CREATE,
          StandardWatchEventKinds.ENTRY_MODIFY,
          StandardWatchEventKinds.ENTRY_DELETE);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot watch " + folder, e);
    }
  }

  @Override
  public boolean await() {
    try {
      taken(watch.take());
      WatchKey more = next();
      while (more != null) {
        taken(more);
        more = next();
      }
      return true;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private @Nullable WatchKey next() throws InterruptedException {
    return watch.poll(STILL_MILLISECONDS, TimeUnit.MILLISECONDS);
  }

  private static void taken(WatchKey key) {
    key.pollEvents();
    key.reset();
  }

  @Override
  public void close() {
    try {
      watch.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot stop watching", e);
    }
  }
}
