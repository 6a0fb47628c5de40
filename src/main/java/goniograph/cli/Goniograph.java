package goniograph.cli;

/** The program: reads the command line, runs one command, ends with its exit code. */
public final class Goniograph {
  private Goniograph() {}

  public static void main(String[] arguments) {
    System.out.println("goniograph");
  }
}
