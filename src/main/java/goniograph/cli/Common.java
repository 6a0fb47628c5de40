package goniograph.cli;

import goniograph.matter.Node;
import goniograph.matter.YamlReader;
import goniograph.source.Files;
import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that every command knows, to be mixed in as a field {@code common}. */
final class Common {
  private static final String CLINIC = "shared/clinic.yaml";

  private final World world;

  @Option(
      names = "--library",
      paramLabel = "DIR",
      description = "The library folder; the working directory unless said.")
  private String library = ".";

  @Option(
      names = "--today",
      paramLabel = "DATE",
      description =
          "The day that counts as today, as in 2026-11-25; the system's date in the clinic's time"
              + " zone unless said.")
  private @Nullable LocalDate today;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  @SuppressWarnings("UnusedVariable") // picocli shows the help itself
  private boolean help;

  Common(World world) {
    this.world = world;
  }

  /** Takes results. */
  PrintWriter out() {
    return world.out();
  }

  /** Makes mends in the library, asking whoever sits at the terminal. */
  Mending mending() {
    return new Mending(files(), world.out(), world.yes());
  }

  /** Takes lines about progress and trouble. */
  PrintWriter err() {
    return world.err();
  }

  /** The library folder as typed, for reports. */
  String library() {
    return library;
  }

  /** The files of the library folder; refused where no library lies there. */
  Files files() {
    Files files = folder(library);
    if (files.bytes(CLINIC).isEmpty()) {
      throw new Refusal(
          "There is no library in `"
              + library
              + "`: it has no "
              + CLINIC
              + ". Give the library folder with --library DIR.");
    }
    return files;
  }

  /** The files of any folder, for instance one to write results to. */
  Files folder(String path) {
    try {
      return world.folders().apply(path);
    } catch (IllegalArgumentException e) {
      throw new Refusal("`" + path + "` is not the name of a folder. Give another.");
    }
  }

  /** The day that counts as today. */
  LocalDate today() {
    return today == null ? world.clock().apply(zone()) : today;
  }

  /** The clinic's time zone, needed only where no day was given. */
  private ZoneId zone() {
    String zone =
        files()
            .text(CLINIC)
            .flatMap(file -> YamlReader.read(file).root())
            .flatMap(root -> root instanceof Node.Fields map ? map.get("time_zone") : null)
            .map(node -> node instanceof Node.Scalar scalar ? scalar.raw() : "")
            .orElse("");
    try {
      return ZoneId.of(zone);
    } catch (DateTimeException e) {
      throw new Refusal(
          "Nobody can tell which day it is at the clinic: `time_zone` in "
              + CLINIC
              + " is not a time zone. Write one such as `time_zone: Europe/Dublin`, or give --today"
              + " DATE.");
    }
  }
}
