package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class GoniographTest {
  private final Console console = new Console();

  @Test
  void helpListsTheCommands() {
    assertEquals(Exit.CLEAN, console.run("--help"));
    assertTrue(console.out().contains("Usage: goniograph"), console.out());
  }

  @Test
  void anUnknownOptionIsWrongUsage() {
    assertEquals(Exit.USAGE, console.run("--colour"));
    assertTrue(console.err().contains("'--colour'"), console.err());
  }
}
