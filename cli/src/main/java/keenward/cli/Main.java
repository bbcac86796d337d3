package keenward.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import keenward.cli.command.CheckCommand;
import keenward.cli.command.CoverageCommand;
import keenward.cli.command.DemoCommand;
import keenward.cli.command.ExportZonesCommand;
import keenward.cli.command.ImportZonesCommand;
import keenward.cli.command.JobCommand;
import keenward.cli.command.LoopsCommand;
import keenward.cli.command.OrderCommand;
import keenward.cli.command.PlanCommand;
import keenward.cli.command.PowerCommand;
import keenward.cli.command.RadioCommand;
import keenward.cli.command.RehearseCommand;
import keenward.cli.command.RulesCommand;
import keenward.cli.command.SampleCommand;
import keenward.cli.command.ServeCommand;
import keenward.cli.command.SuggestCommand;
import keenward.cli.command.Surroundings;
import keenward.cli.command.TestPlanCommand;
import keenward.cli.command.TraceCommand;
import keenward.cli.command.WalksCommand;
import keenward.cli.command.WiringCommand;
import keenward.core.progress.WorkStopped;
import keenward.usecases.site.BadInput;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the program starts. */
@Command(
    name = "keenward",
    description = "Does an intruder-alarm technician's whole job from one site plan.",
    versionProvider = Version.class,
    mixinStandardHelpOptions = true,
    footer = {"", "Exit codes: 0 fine, 1 findings of error level, 2 bad input or usage."})
public final class Main implements Runnable {

  private static final int BAD_INPUT = 2;

  /** Runs the command named by {@code arguments} and ends the process with its exit code. */
  public static void main(String[] arguments) {
    Surroundings surroundings =
        new Surroundings(
            Path.of(System.getProperty("keenward.home", ".")),
            Version.text(),
            Clock.system(ZoneId.systemDefault()),
            new PrintWriter(System.out, false, StandardCharsets.UTF_8),
            new PrintWriter(System.err, true, StandardCharsets.UTF_8),
            isTerminal());
    int exit = commandLine(surroundings).execute(arguments);
    surroundings.out().flush();
    System.exit(exit);
  }

  // Whether there is a console at all without a terminal differs between releases of Java.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    return console != null && console.isTerminal();
  }

  /** The commands in their surroundings. */
  public static CommandLine commandLine(Surroundings surroundings) {
    return new CommandLine(new Main())
        .addSubcommand(new CheckCommand(surroundings))
        .addSubcommand(new PowerCommand(surroundings))
        .addSubcommand(new WiringCommand(surroundings))
        .addSubcommand(new LoopsCommand(surroundings))
        .addSubcommand(new RadioCommand(surroundings))
        .addSubcommand(new TraceCommand(surroundings))
        .addSubcommand(new CoverageCommand(surroundings))
        .addSubcommand(new WalksCommand(surroundings))
        .addSubcommand(new SuggestCommand(surroundings))
        .addSubcommand(new RehearseCommand(surroundings))
        .addSubcommand(new OrderCommand(surroundings))
        .addSubcommand(new TestPlanCommand(surroundings))
        .addSubcommand(PlanCommand.create(surroundings))
        .addSubcommand(new ImportZonesCommand(surroundings))
        .addSubcommand(new ExportZonesCommand(surroundings))
        .addSubcommand(new SampleCommand(surroundings))
        .addSubcommand(new JobCommand(surroundings))
        .addSubcommand(new RulesCommand(surroundings))
        .addSubcommand(new ServeCommand(surroundings))
        .addSubcommand(new DemoCommand(surroundings))
        .setOut(surroundings.out())
        .setErr(surroundings.err())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(
            (failure, commandLine, result) -> explain(surroundings, failure));
  }

  private static int explain(Surroundings surroundings, Exception failure) {
    surroundings.out().flush();
    switch (failure) {
      case BadInput bad -> bad.messages().forEach(surroundings.err()::println);
      case WorkStopped stopped -> surroundings.err().println("keenward: " + stopped.getMessage());
      case java.io.IOException io -> surroundings.err().println("keenward: " + io.getMessage());
      default ->
          surroundings
              .err()
              .println(
                  "keenward: a fault in the program, please report it with the plan: "
                      + failure.getClass().getSimpleName()
                      + (failure.getMessage() == null ? "" : ": " + failure.getMessage()));
    }
    return BAD_INPUT;
  }

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }
}
