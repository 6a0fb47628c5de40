package goniograph.cli;

import goniograph.register.Refused;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The program: reads the command line, runs one command, ends with its exit code. */
@Command(
    name = "goniograph",
    description = "Makes checked, illustrated patient exercise sheets from text files.",
    synopsisSubcommandLabel = "COMMAND",
    footer = "%n`goniograph COMMAND --help` tells more about one command.")
public final class Goniograph {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  @SuppressWarnings("UnusedVariable") // picocli shows the help itself
  private boolean help;

  private Goniograph() {}

  /** Runs the command on the terminal and the disk, and ends the process. */
  public static void main(String[] arguments) {
    int code = run(World.real(), arguments);
    System.exit(code);
  }

  /** Runs one command and gives its {@link Exit} code. */
  static int run(World world, String... arguments) {
    CommandLine line =
        commands(world)
            .setOut(world.out())
            .setErr(world.err())
            .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
            .setParameterExceptionHandler(Goniograph::misused)
            .setExecutionExceptionHandler(Goniograph::failed);
    try {
      return line.execute(arguments);
    } catch (Error fault) {
      world.err().print(FaultReport.of(line.getCommandName(), fault));
      return Exit.FAULT;
    } finally {
      world.out().flush();
      world.err().flush();
    }
  }

  /** Every command; a new one is one line here. */
  private static CommandLine commands(World world) {
    return new CommandLine(new Goniograph())
        .addSubcommand(new CheckCommand(world))
        .addSubcommand(new BuildCommand(world))
        .addSubcommand(new FigureCommand(world))
        .addSubcommand(new ExplainCommand(world))
        .addSubcommand(new SchemaCommand(world))
        .addSubcommand(
            new CommandLine(new NewCommand())
                .addSubcommand(new NewExercise(world))
                .addSubcommand(new NewAdvice(world)))
        .addSubcommand(
            new CommandLine(new RegisterCommand())
                .addSubcommand(new SignCommand(world))
                .addSubcommand(new AcceptCommand(world))
                .addSubcommand(new ReleaseCommand(world))
                .addSubcommand(new ShowCommand(world)));
  }

  private static int misused(ParameterException fault, String[] arguments) {
    CommandLine line = fault.getCommandLine();
    line.getErr().println(fault.getMessage());
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(fault, line.getErr())) {
      String name = line.getCommandSpec().qualifiedName();
      line.getErr().println("`" + name + " --help` shows what it takes.");
    }
    return Exit.USAGE;
  }

  private static int failed(Exception fault, CommandLine line, ParseResult parsed) {
    if (fault instanceof Refusal || fault instanceof Refused) {
      line.getErr().println(fault.getMessage());
      return Exit.USAGE;
    }
    if (fault instanceof UncheckedIOException unread) {
      line.getErr().println(FaultReport.disk(unread));
      return Exit.USAGE;
    }
    line.getErr().print(FaultReport.of(line.getCommandSpec().qualifiedName(), fault));
    return Exit.FAULT;
  }
}
