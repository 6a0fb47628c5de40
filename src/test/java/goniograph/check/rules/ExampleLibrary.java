package goniograph.check.rules;

import goniograph.check.Approvals;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Poses;
import goniograph.library.Library;
import goniograph.library.LibraryRead;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import goniograph.source.SourceFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * The small library that the examples of the rules change: entries and tables of its own, and the
 * phrases, statements, terms and sources of the demo library, and of its rules all but the dose
 * limits.
 */
public final class ExampleLibrary {
  public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Files OWN =
      DiskFiles.at(Path.of("src/test/resources/goniograph/check/library"));
  private static final Files DEMO = DiskFiles.at(Path.of("."));
  private static final List<String> OF_THE_DEMO =
      List.of("shared/phrases", "shared/statements", "shared/terms", "shared/rules");

  private static final String SOURCES = "shared/sources.yaml";

  private static final Checked BASE = Checked.of(with(List.of()), TODAY);

  private ExampleLibrary() {}

  /** A fresh copy with these changes. */
  public static Files with(List<Example.Edit> edits) {
    MemoryFiles files = new MemoryFiles();
    OF_THE_DEMO.forEach(folder -> copy(DEMO, folder, files));
    files.write(SOURCES, DEMO.bytes(SOURCES).orElseThrow());
    copy(OWN, "", files);
    edits.forEach(edit -> apply(edit, files));
    return files;
  }

  private static void copy(Files from, String folder, MemoryFiles to) {
    for (String path : from.list(folder)) {
      to.write(path, from.bytes(path).orElseThrow());
    }
  }

  private static void apply(Example.Edit edit, MemoryFiles files) {
    if (edit.from().equals(Example.Edit.WHOLE)) {
      files.delete(edit.file());
    } else {
      files.with(edit.file(), edited(files, edit));
    }
  }

  private static String edited(Files files, Example.Edit edit) {
    String text = text(files, edit.file());
    int at = text.indexOf(edit.from());
    if (at < 0 || (!edit.from().isEmpty() && text.indexOf(edit.from(), at + 1) >= 0)) {
      throw new AssertionError("must stand exactly once in " + edit.file() + ": " + edit.from());
    }
    return text.substring(0, at) + edit.to() + text.substring(at + edit.from().length());
  }

  static String text(Files files, String path) {
    return new String(files.bytes(path).orElse(new byte[0]), StandardCharsets.UTF_8);
  }

  private static List<String> texts(Library library) {
    return library.figures().values().stream().map(SourceFile::text).toList();
  }

  /** Poses are solved again only where an example changes one. */
  static Checked checked(Files files) {
    LibraryRead read = Library.read(files);
    boolean same = texts(read.library()).equals(texts(BASE.library()));
    Poses poses = same ? BASE.poses() : Poses.of(read.library());
    return new Checked(read, poses, Approvals.of(files, read.library(), TODAY), TODAY);
  }
}
