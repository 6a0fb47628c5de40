package goniograph.testing;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/**
 * Outside programs that tests measure against. Where one is missing the test is skipped with a
 * sentence on how to get it, or fails when the system property {@code goniograph.no-skips} is true.
 */
public final class Programs {
  private static final boolean NO_SKIPS = Boolean.getBoolean("goniograph.no-skips");

  private Programs() {}

  /** Goes on only where the program is installed; {@code debianPackage} brings it. */
  public static void need(String program, String debianPackage) {
    if (!installed(program)) {
      missing(program + " is not installed; Debian's package " + debianPackage + " brings it");
    }
  }

  /** Skips the test with a reason, or fails it where skipping is forbidden. */
  public static void missing(String reason) {
    if (NO_SKIPS) {
      fail(reason + " (goniograph.no-skips is true)");
    }
    System.err.println("SKIPPED a test: " + reason);
    Assumptions.abort(reason);
  }

  private static boolean installed(String program) {
    for (String folder : System.getenv().getOrDefault("PATH", "").split(":")) {
      if (Files.isExecutable(Path.of(folder, program))) {
        return true;
      }
    }
    return false;
  }

  /** Runs a program to its end and gives what it printed; fails the test when it fails. */
  public static String run(String program, String... arguments) {
    List<String> command = new ArrayList<>(List.of(program));
    command.addAll(List.of(arguments));
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getOutputStream().close();
      String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (process.waitFor() != 0) {
        fail(String.join(" ", command) + " failed: " + printed);
      }
      return printed;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The text of a PDF as poppler's {@code pdftotext} reads it, with its direction controls. */
  public static String popplerText(byte[] pdf) {
    need("pdftotext", "poppler-utils");
    try {
      Path file = Files.createTempFile("sheet", ".pdf");
      try {
        Files.write(file, pdf);
        return run("pdftotext", "-enc", "UTF-8", file.toString(), "-");
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
