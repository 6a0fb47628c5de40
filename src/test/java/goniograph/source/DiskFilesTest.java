package goniograph.source;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file on disk is whole or absent, whatever happens while it is written. */
class DiskFilesTest {
  @TempDir private Path folder;

  private static byte[] whole(int value) {
    byte[] bytes = new byte[1 << 20];
    Arrays.fill(bytes, (byte) value);
    return bytes;
  }

  private List<String> onDisk() throws IOException {
    try (Stream<Path> all = java.nio.file.Files.walk(folder)) {
      return all.filter(java.nio.file.Files::isRegularFile)
          .map(path -> folder.relativize(path).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void aReaderNeverSeesAPart() throws Exception {
    Files files = DiskFiles.at(folder);
    files.write("en/a.pdf", whole(0));
    CountDownLatch reading = new CountDownLatch(1);
    ExecutorService other = Executors.newSingleThreadExecutor();
    try {
      Future<Integer> seen =
          other.submit(
              () -> {
                int last = 0;
                while (last != 60) {
                  byte[] bytes = files.bytes("en/a.pdf").orElseThrow();
                  reading.countDown();
                  last = bytes[0];
                  assertArrayEquals(whole(last), bytes);
                  assertEquals(List.of("en/a.pdf"), files.list(""));
                }
                return last;
              });
      reading.await();
      for (int value = 1; value <= 60; value++) {
        files.write("en/a.pdf", whole(value));
      }
      assertEquals(60, seen.get());
    } finally {
      other.shutdownNow();
    }
    assertEquals(List.of("en/a.pdf"), onDisk());
  }

  /** A folder that is not empty cannot be renamed over: the write fails at its last step. */
  @Test
  void aWriteThatFailsLeavesTheOldAndNoHalf() throws IOException {
    Files files = DiskFiles.at(folder);
    files.write("en/a.pdf/old", whole(1));
    assertThrows(UncheckedIOException.class, () -> files.write("en/a.pdf", whole(2)));
    assertArrayEquals(whole(1), files.bytes("en/a.pdf/old").orElseThrow());
    assertEquals(List.of("en/a.pdf/old"), onDisk());
  }

  /** The process id is of a process of ours that has ended. */
  @Test
  void whatAKilledProcessLeftIsNeverListedAndGoesAtTheNextWrite() throws Exception {
    Process killed = new ProcessBuilder("sleep", "60").start();
    killed.destroyForcibly().waitFor();
    Path beside = java.nio.file.Files.createDirectories(folder.resolve("en"));
    Path left = beside.resolve("." + killed.pid() + "-123.half");
    Path living = beside.resolve("." + ProcessHandle.current().pid() + "-456.half");
    java.nio.file.Files.write(left, whole(1));
    java.nio.file.Files.write(living, whole(1));
    Files files = DiskFiles.at(folder);
    assertEquals(List.of(), files.list(""));
    files.write("en/a.pdf", whole(2));
    assertEquals(List.of("en/a.pdf"), files.list(""));
    assertTrue(java.nio.file.Files.notExists(left));
    assertTrue(java.nio.file.Files.exists(living), "another thread may be writing it");
  }

  @Test
  void aChangeIsToldAndAnInterruptEndsTheWait() {
    DiskFiles files = DiskFiles.at(folder);
    files.write("figures/a.yaml", new byte[] {1});
    try (Changes changes = files.changes("figures")) {
      files.write("figures/a.yaml", new byte[] {2});
      assertTrue(changes.await());
      Thread.currentThread().interrupt();
      assertFalse(changes.await());
      assertTrue(Thread.interrupted());
    }
  }
}
