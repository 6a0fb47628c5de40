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
import java.util.function.Function;

/**
 * What lies outside the program; tests put their own in its place.
 *
 * @param out takes results
 * @param err takes refusals, reports of faults and lines about progress
 * @param folders the files of a folder that was typed on the command line
 * @param clock the day it is in a time zone
 */
record World(
    PrintWriter out,
    PrintWriter err,
    Function<String, Files> folders,
    Function<ZoneId, LocalDate> clock) {

  /** The terminal, the disk and the system's clock. Text is UTF-8 whatever the system prefers. */
  static World real() {
    return new World(
        new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true),
        new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true),
        folder -> DiskFiles.at(Path.of(folder)),
        Today::in);
  }
}
