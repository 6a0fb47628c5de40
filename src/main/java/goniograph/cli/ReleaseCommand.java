package goniograph.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(name = "release")
final class ReleaseCommand implements Callable<Integer> {
  @Mixin private final Common common;

  ReleaseCommand(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    return Exit.CLEAN;
  }
}
