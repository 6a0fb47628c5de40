package goniograph.source;

import java.util.List;
import java.util.Optional;

/**
 * The files of one folder. Paths are relative, with {@code /}; a path that leads out of the folder
 * is refused with an {@link IllegalArgumentException}.
 */
public interface Files {

  /** The file's bytes, or empty where there is no such file. */
  Optional<byte[]> bytes(String path);

  /** All files below {@code folder} ("" for all), as sorted relative paths. */
  List<String> list(String folder);

  /** Writes a file whole: readers see the old content or the new, never a part. */
  void write(String path, byte[] bytes);

  /** Removes a file, if it is there. */
  void delete(String path);

  /** The changes of the files that lie directly in {@code folder}; it must be there. */
  Changes changes(String folder);

  /** The file as text, or empty where there is no such file. */
  default Optional<SourceFile> text(String path) {
    return bytes(path).map(bytes -> SourceFile.of(path, bytes));
  }
}
