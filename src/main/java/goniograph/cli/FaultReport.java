package goniograph.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Objects;

/** What is said when something fails that nobody who typed a command can mend. */
final class FaultReport {
  private FaultReport() {}

  /** The sentence about a disk that cannot be read or written. */
  static String disk(UncheckedIOException fault) {
    IOException cause = Objects.requireNonNull(fault.getCause());
    return "The disk refused: "
        + fault.getMessage()
        + " ("
        + cause.getClass().getSimpleName()
        + "). Look whether the folder exists, may be written and is not full.";
  }

  /**
   * A report to send to the maintainers. It names the command but none of its arguments, which
   * could say something about a patient.
   */
  static String of(String command, Throwable fault) {
    StringWriter text = new StringWriter();
    PrintWriter lines = new PrintWriter(text);
    lines.println("This is a fault of Goniograph, not of your library. Nothing more was done.");
    lines.println("Please send the lines below to whoever looks after Goniograph for you.");
    lines.println("--- report: " + command);
    lines.println("Java " + Runtime.version() + ", " + System.getProperty("os.name"));
    fault.printStackTrace(lines);
    lines.println("--- end of report");
    lines.flush();
    return text.toString();
  }
}
