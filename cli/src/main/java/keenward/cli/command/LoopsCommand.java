package keenward.cli.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.LoopsText;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.usecases.loops.LoopReading;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what the panel reads of each loop, or what a measured resistance means. */
@Command(
    name = "loops",
    description = "Shows what the panel reads of each loop, or what a measured resistance means.",
    mixinStandardHelpOptions = true)
public final class LoopsCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Option(names = "--zone", paramLabel = "N", description = "The zone whose loop was measured.")
  @Nullable Integer zone;

  @Option(
      names = "--measured",
      paramLabel = "OHMS|open",
      description =
          "What was measured at the panel's end, its cores taken off, such as '2.35 kohm'.")
  @Nullable String measured;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "How to print the result (default: ${DEFAULT-VALUE}).")
  Format format = Format.text;

  /** The command in its surroundings. */
  public LoopsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    if ((zone == null) != (measured == null)) {
      throw new BadInput(
          zone == null ? "--zone" : "--measured",
          "not given",
          "--zone and --measured together",
          "say which loop reads what");
    }
    SiteFile file = SiteFiles.load(site);
    if (zone != null && measured != null) {
      LoopReading reading = LoopReading.of(file, zone, measured);
      surroundings
          .out()
          .print(format == Format.json ? Json.loop(file, reading) : LoopsText.of(file, reading));
      return Exit.FINE;
    }
    LoopAssessment loops = LoopAssessment.of(file.plan());
    surroundings
        .out()
        .print(format == Format.json ? Json.loops(file, loops) : LoopsText.of(file, loops));
    return Exit.FINE;
  }
}
