package keenward.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.Callable;
import keenward.usecases.sample.SampleSite;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.OutputFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Invents a site plan with so many zones, to try things on. */
@Command(
    name = "sample",
    description = "Invents a site plan with so many zones, to try things on.",
    mixinStandardHelpOptions = true)
public final class SampleCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Option(
      names = "--zones",
      paramLabel = "N",
      required = true,
      description = "How many zones, 1 to " + SampleSite.MOST_ZONES + ".")
  int zones;

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "Another number, another site (default: ${DEFAULT-VALUE}).")
  long seed = 1;

  @Option(
      names = "--out",
      paramLabel = "SITE",
      description = "The site plan to write (default: to standard output).")
  @Nullable Path out;

  @Option(names = "--replace", description = "Replace a site plan that is there already.")
  boolean replace;

  /** The command in its surroundings. */
  public SampleCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (zones < 1 || zones > SampleSite.MOST_ZONES) {
      surroundings.err().println("--zones: " + zones + "; expected 1 to " + SampleSite.MOST_ZONES);
      return Exit.BAD_INPUT;
    }
    // Random, because its numbers are specified: a seed means the same site for ever.
    String plan = SampleSite.of(zones, new Random(seed));
    if (out == null) {
      surroundings.out().print(plan);
    } else {
      OutputFile.write(out, plan.getBytes(StandardCharsets.UTF_8), replace);
      surroundings.out().println(zones + " zones written to " + out);
    }
    return Exit.FINE;
  }
}
