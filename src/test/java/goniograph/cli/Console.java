package goniograph.cli;

import goniograph.source.MemoryFiles;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;

/** Runs commands on a library in memory and keeps what they print. */
final class Console {
  final MemoryFiles files = new MemoryFiles();
  private StringWriter out = new StringWriter();
  private StringWriter err = new StringWriter();

  /** Runs one command; {@link #out} and {@link #err} hold what it printed. */
  int run(String... arguments) {
    out = new StringWriter();
    err = new StringWriter();
    World world =
        new World(
            new PrintWriter(out),
            new PrintWriter(err),
            folder -> files,
            zone -> LocalDate.of(2026, 11, 25));
    return Goniograph.run(world, arguments);
  }

  String out() {
    return out.toString();
  }

  String err() {
    return err.toString();
  }
}
