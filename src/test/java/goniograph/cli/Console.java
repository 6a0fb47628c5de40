package goniograph.cli;

import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/** Runs commands on a library in memory and keeps what they print. */
final class Console {
  final MemoryFiles files = new MemoryFiles();
  private Optional<BooleanSupplier> answer = Optional.empty();
  private StringWriter out = new StringWriter();
  private StringWriter err = new StringWriter();

  /** Runs one command; {@link #out} and {@link #err} hold what it printed. */
  int run(String... arguments) {
    return run(folder -> files, arguments);
  }

  /** Runs one command on a disk that throws. */
  int run(Throwable thrown, String... arguments) {
    return run(folder -> fail(thrown), arguments);
  }

  private int run(Function<String, Files> folders, String... arguments) {
    out = new StringWriter();
    err = new StringWriter();
    World world =
        new World(
            new PrintWriter(out),
            new PrintWriter(err),
            folders,
            zone -> LocalDate.of(2026, 11, 25),
            answer);
    return Goniograph.run(world, arguments);
  }

  private static Files fail(Throwable thrown) {
    if (thrown instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) thrown;
  }

  /** Whoever sits at the terminal gives this answer to every question. */
  void answers(boolean yes) {
    answer = Optional.of(() -> yes);
  }

  String out() {
    return out.toString();
  }

  String err() {
    return err.toString();
  }
}
