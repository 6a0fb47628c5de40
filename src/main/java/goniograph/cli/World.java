package goniograph.cli;

import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.Today;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What lies outside the program; tests put their own in its place.
 *
 * @param out takes results
 * @param err takes refusals, reports of faults and lines about progress
 * @param folders the files of a folder that was typed on the command line
 * @param clock the day it is in a time zone
 * @param yes waits for a yes; empty where nobody sits at a terminal
 */
record World(
    PrintWriter out,
    PrintWriter err,
    Function<String, Files> folders,
    Function<ZoneId, LocalDate> clock,
    Optional<BooleanSupplier> yes) {

  /** The terminal, the disk and the system's clock. Text is UTF-8 whatever the system prefers. */
  static World real() {
    return new World(
        new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true),
        new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true),
        folder -> DiskFiles.at(Path.of(folder)),
        Today::in,
        Optional.ofNullable(System.console()).map(console -> () -> yes(console.readLine())));
  }

  private static boolean yes(@Nullable String line) {
    return line != null && Set.of("y", "yes").contains(line.strip().toLowerCase(Locale.ROOT));
  }
}
