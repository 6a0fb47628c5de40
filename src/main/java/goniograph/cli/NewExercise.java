package goniograph.cli;

import goniograph.exchange.NoteBlank;
import goniograph.exchange.NoteSorter;
import goniograph.library.Kind;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a blank exercise and its blank pose file. */
@Command(name = "exercise", description = "Makes a blank exercise with its pose file.")
final class NewExercise implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(paramLabel = "NAME", description = "Its id, for instance kn-heel-slide.")
  private String name = "";

  @Option(
      names = "--from",
      paramLabel = "NOTE",
      description =
          "A plain-text note in English: its text is sorted into the sections; its numbers become"
              + " questions beside the empty fields.")
  private @Nullable Path note;

  NewExercise(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    String id = Blanks.id(name);
    Map<String, String> files = new LinkedHashMap<>();
    files.put(Blanks.entry(Kind.EXERCISE, id), sorted(Blanks.blank("exercise.md", id)));
    files.put("figures/" + id + ".yaml", Blanks.blank("pose.yaml", id));
    new Blanks(common).make(id, files);
    return Exit.CLEAN;
  }

  private String sorted(String blank) {
    return note == null ? blank : NoteBlank.filled(blank, NoteSorter.sort(text(note)));
  }

  private String text(Path path) {
    String folder = path.getParent() == null ? "." : path.getParent().toString();
    return Optional.ofNullable(path.getFileName())
        .flatMap(name -> common.folder(folder).text(name.toString()))
        .map(SourceFile::text)
        .orElseThrow(() -> new Refusal("There is no file `" + path + "`."));
  }
}
