package goniograph.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files of one folder on disk. Hidden files and folders are left alone. A file is written
 * beside its name, hidden, and renamed; what a killed process left of that goes at the next write.
 */
public final class DiskFiles implements Files {
  private static final String HALF = ".half";
  private static final Pattern HALF_OF_PROCESS = Pattern.compile("\\.([0-9]{1,18})-.*\\.half");

  private final Path folder;

  private DiskFiles(Path folder) {
    this.folder = folder;
  }

  /** The folder at {@code path}; it need not exist until something is written. */
  public static DiskFiles at(Path path) {
    return new DiskFiles(path.toAbsolutePath().normalize());
  }

  @Override
  public Optional<byte[]> bytes(String path) {
    Path file = folder.resolve(Paths.checked(path));
    try {
      return java.nio.file.Files.isRegularFile(file)
          ? Optional.of(java.nio.file.Files.readAllBytes(file))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  @Override
  public List<String> list(String below) {
    Path root = below.isEmpty() ? folder : folder.resolve(Paths.checked(below));
    if (!java.nio.file.Files.isDirectory(root)) {
      return List.of();
    }
    List<Path> found = new ArrayList<>();
    try {
      java.nio.file.Files.walkFileTree(root, new Finder(found));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root, e);
    }
    return found.stream()
        .map(folder::relativize)
        .filter(DiskFiles::visible)
        .map(path -> path.toString().replace('\\', '/'))
        .sorted()
        .toList();
  }

  /** Finds plain files; one that goes while others are looked at is not there. */
  private static final class Finder extends SimpleFileVisitor<Path> {
    private final List<Path> found;

    Finder(List<Path> found) {
      this.found = found;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      if (java.nio.file.Files.isRegularFile(file)) {
        found.add(file);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
      if (e instanceof NoSuchFileException) {
        return FileVisitResult.CONTINUE;
      }
      throw e;
    }
  }

  /**
   * A name that no other process or thread takes; the file gets the rights that others get here.
   */
  private static String halfName(Path file) {
    long process = ProcessHandle.current().pid();
    long thread = Thread.currentThread().getId();
    return "." + process + "-" + thread + "-" + file.getFileName() + HALF;
  }

  @Override
  public void write(String path, byte[] bytes) {
    Path file = folder.resolve(Paths.checked(path));
    try {
      Path beside = java.nio.file.Files.createDirectories(parent(file));
      removeLeftovers(beside);
      Path half = beside.resolve(halfName(file));
      try {
        java.nio.file.Files.write(half, bytes);
        java.nio.file.Files.move(
            half, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        java.nio.file.Files.deleteIfExists(half);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  /** Halves of processes that no longer live. */
  private static void removeLeftovers(Path beside) throws IOException {
    try (DirectoryStream<Path> halves =
        java.nio.file.Files.newDirectoryStream(beside, ".*" + HALF)) {
      for (Path half : halves) {
        if (isLeftover(half)) {
          java.nio.file.Files.deleteIfExists(half);
        }
      }
    }
  }

  private static boolean isLeftover(Path half) {
    Matcher process = HALF_OF_PROCESS.matcher(String.valueOf(half.getFileName()));
    return process.matches() && ProcessHandle.of(Long.parseLong(process.group(1))).isEmpty();
  }

  @Override
  public void delete(String path) {
    try {
      java.nio.file.Files.deleteIfExists(folder.resolve(Paths.checked(path)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + path, e);
    }
  }

  @Override
  public Changes changes(String path) {
    return new DiskChanges(path.isEmpty() ? folder : folder.resolve(Paths.checked(path)));
  }

  private static Path parent(Path file) {
    Path parent = file.getParent();
    return parent == null ? file : parent;
  }

  private static boolean visible(Path path) {
    for (Path part : path) {
      if (part.toString().startsWith(".")) {
        return false;
      }
    }
    return true;
  }
}
