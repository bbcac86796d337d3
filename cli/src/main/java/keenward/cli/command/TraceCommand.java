package keenward.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.OutputFile;
import keenward.usecases.site.SiteFiles;
import keenward.usecases.trace.TracedFloor;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the picture of a floor under a measured grid, to read the corners of rooms off it. */
@Command(
    name = "trace",
    description =
        "Draws the picture of a floor (`backdrop:`) under a measured grid, to read corners off it.",
    mixinStandardHelpOptions = true)
public final class TraceCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Option(
      names = "--floor",
      paramLabel = "NAME",
      description = "The floor; needed where several have a picture.")
  @Nullable String floor;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The SVG file to write (default: to standard output).")
  @Nullable Path out;

  @Option(names = "--replace", description = "Replace a file that is there already.")
  boolean replace;

  /** The command in its surroundings. */
  public TraceCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    TracedFloor traced = TracedFloor.of(SiteFiles.load(site), floor);
    if (out == null) {
      surroundings.out().print(traced.svg());
    } else {
      OutputFile.write(out, traced.svg().getBytes(StandardCharsets.UTF_8), replace);
      surroundings.out().println(traced.floor().name() + " drawn to " + out);
    }
    return Exit.FINE;
  }
}
