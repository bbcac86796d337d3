package keenward.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.ImportText;
import keenward.usecases.site.BadInput;
import keenward.usecases.zonelist.ImportedList;
import keenward.usecases.zonelist.ZoneLists;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a technician's own list of zones as it comes, and makes a site plan of it. */
@Command(
    name = "import-zones",
    description =
        "Takes a technician's own list of zones as it comes, and makes a site plan of it.",
    mixinStandardHelpOptions = true)
public final class ImportZonesCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "LIST", description = "The list (.csv, .tsv, .xlsx).")
  Path list = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "SITE",
      required = true,
      description = "The site plan to write (*.site.yaml).")
  Path out = Path.of("");

  @Option(
      names = "--map",
      paramLabel = "FILE",
      description = "What the list's own words and columns mean.")
  @Nullable Path map;

  @Option(names = "--replace", description = "Replace a site plan that is there already.")
  boolean replace;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "How to print the report (default: ${DEFAULT-VALUE}).")
  Format format = Format.text;

  /** The command in its surroundings. */
  public ImportZonesCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    ImportedList imported = ZoneLists.read(list, map);
    ZoneLists.save(imported, out, replace);
    surroundings
        .out()
        .print(
            format == Format.json
                ? Json.imported(list, out, imported)
                : ImportText.of(imported, out));
    return Exit.FINE;
  }
}
