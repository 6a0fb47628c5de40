package goniograph.cli;

import goniograph.library.Kind;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Makes a blank advice topic. */
@Command(name = "advice", description = "Makes a blank advice topic.")
final class NewAdvice implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(paramLabel = "NAME", description = "Its id, for instance ad-bad-day.")
  private String name = "";

  NewAdvice(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    String id = Blanks.id(name);
    new Blanks(common)
        .make(id, Map.of(Blanks.entry(Kind.ADVICE, id), Blanks.blank("advice.md", id)));
    return Exit.CLEAN;
  }
}
