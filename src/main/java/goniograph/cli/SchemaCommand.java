package goniograph.cli;

import goniograph.exchange.FrontMatterSchema;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code schema}: the front matter as JSON Schema. */
@Command(
    name = "schema",
    description = "Prints the front matter of all entries as JSON Schema (2020-12), for editors.")
final class SchemaCommand implements Callable<Integer> {
  private final World world;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  @SuppressWarnings("UnusedVariable") // picocli shows the help itself
  private boolean help;

  SchemaCommand(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    world.out().print(FrontMatterSchema.of());
    return Exit.CLEAN;
  }
}
