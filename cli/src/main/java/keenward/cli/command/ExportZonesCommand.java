package keenward.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import keenward.usecases.zonelist.ZoneLists;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the zones of a plan as a table for a spreadsheet. */
@Command(
    name = "export-zones",
    description = "Writes the zones of a plan as a table; import-zones takes it back.",
    mixinStandardHelpOptions = true)
public final class ExportZonesCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "The table to write (.csv or .xlsx).")
  Path out = Path.of("");

  @Option(names = "--replace", description = "Replace a table that is there already.")
  boolean replace;

  /** The command in its surroundings. */
  public ExportZonesCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    SiteFile file = SiteFiles.load(site);
    ZoneLists.export(file, out, replace, surroundings.version());
    surroundings.out().println(file.plan().zones().size() + " zones written to " + out);
    return Exit.FINE;
  }
}
