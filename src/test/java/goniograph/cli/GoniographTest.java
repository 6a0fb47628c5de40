package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.Test;

class GoniographTest {
  private final Console console = new Console();

  @Test
  void helpListsTheCommands() {
    assertEquals(Exit.CLEAN, console.run("--help"));
    assertTrue(console.out().contains("Usage: goniograph"), console.out());
    assertTrue(console.out().contains("register"), console.out());
  }

  @Test
  void anUnknownOptionIsWrongUsage() {
    assertEquals(Exit.USAGE, console.run("--colour"));
    assertTrue(console.err().contains("'--colour'"), console.err());
  }

  @Test
  void aFaultOfOurOwnGivesAReportWithoutArguments() {
    int code = console.run(new IllegalStateException("boom"), "new", "advice", "ad-secret");
    assertEquals(Exit.FAULT, code);
    assertTrue(console.err().contains("--- report: goniograph new advice"), console.err());
    assertTrue(console.err().contains("java.lang.IllegalStateException: boom"), console.err());
    assertFalse(console.err().contains("ad-secret"), console.err());
  }

  @Test
  void evenAnErrorOfTheMachineIsAFaultAndNotAFinding() {
    assertEquals(Exit.FAULT, console.run(new StackOverflowError(), "new", "advice", "ad-bad-day"));
    assertTrue(console.err().contains("--- report: goniograph"), console.err());
  }

  @Test
  void aDiskThatRefusesIsNoFaultOfOurs() {
    UncheckedIOException full =
        new UncheckedIOException("cannot write x", new IOException("No space left on device"));
    assertEquals(Exit.USAGE, console.run(full, "new", "advice", "ad-bad-day"));
    assertEquals(
        "The disk refused: cannot write x (IOException). Look whether the folder exists, may be"
            + " written and is not full.\n",
        console.err());
  }

  @Test
  void theClinicsZoneDecidesWhichDayItIs() {
    console.files.with("shared/clinic.yaml", "name: Quillhaven\ntime_zone: Nowhere/Town\n");
    String[] sign = {"register", "sign", "rules", "--as", "clinician-1", "--role", "clinical"};
    assertEquals(Exit.USAGE, console.run(sign));
    assertTrue(console.err().contains("`time_zone` in shared/clinic.yaml"), console.err());
  }
}
