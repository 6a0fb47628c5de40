package goniograph.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(name = "show")
final class ShowCommand implements Callable<Integer> {
  @Mixin private final Common common;

  ShowCommand(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    return Exit.CLEAN;
  }
}
