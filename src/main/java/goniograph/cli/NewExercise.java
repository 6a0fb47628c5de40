package goniograph.cli;

import goniograph.library.Kind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Makes a blank exercise and its blank pose file. */
@Command(name = "exercise", description = "Makes a blank exercise with its pose file.")
final class NewExercise implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(paramLabel = "NAME", description = "Its id, for instance kn-heel-slide.")
  private String name = "";

  NewExercise(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    String id = Blanks.id(name);
    Map<String, String> files = new LinkedHashMap<>();
    files.put(Blanks.entry(Kind.EXERCISE, id), "exercise.md");
    files.put("figures/" + id + ".yaml", "pose.yaml");
    new Blanks(common).make(id, files);
    return Exit.CLEAN;
  }
}
