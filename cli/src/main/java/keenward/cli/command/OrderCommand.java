package keenward.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.cli.text.OrderText;
import keenward.usecases.order.KeyIn;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Makes the work order for the panel, proved; or an entry sheet where the panel has no description.
 */
@Command(
    name = "order",
    description =
        "Makes the work order for the panel, proved; or an entry sheet where the panel has no description.",
    mixinStandardHelpOptions = true)
public final class OrderCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Parameters(paramLabel = "SITE", description = "The site plan (*.site.yaml).")
  Path site = Path.of("");

  @Mixin final JobChoices choices = new JobChoices();

  @Option(
      names = "--from",
      paramLabel = "defaults|unknown|FILE",
      description = "What the panel holds now (default: ${DEFAULT-VALUE}).")
  String from = "defaults";

  @Option(
      names = "--keypad",
      paramLabel = "KIND",
      description = "Kind of keypad in use (default: the plan's, else the usual one).")
  @Nullable String keypad;

  @Option(
      names = "--overwrite-unseen",
      paramLabel = "FIELD",
      description =
          "A panel field that may be overwritten without being read first; may be repeated.")
  List<String> consents = List.of();

  /** The command in its surroundings. */
  public OrderCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws BadInput {
    SiteFile file = SiteFiles.load(site);
    KeyIn keyIn;
    try (ProgressLine progress = new ProgressLine(surroundings)) {
      keyIn =
          surroundings
              .keenward()
              .keyIn(file, choices.options(surroundings, from, keypad, consents), progress);
    }
    surroundings.out().print(choices.json() ? Json.keyIn(file, keyIn) : OrderText.of(file, keyIn));
    return keyIn instanceof KeyIn.Refused ? Exit.FINDINGS : Exit.FINE;
  }
}
