package keenward.cli.command;

import java.util.List;
import java.util.concurrent.Callable;
import keenward.cli.json.Json;
import keenward.core.rules.RuleCard;
import keenward.core.rules.catalogue.RuleRegistry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the rules. */
@Command(
    name = "rules",
    description = "Lists every rule that `check` applies.",
    mixinStandardHelpOptions = true)
public final class RulesCommand implements Callable<Integer> {

  private final Surroundings surroundings;

  @Option(names = "--format", paramLabel = "text|json", description = "How to print the list.")
  Format format = Format.text;

  /** The command in its surroundings. */
  public RulesCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    List<RuleCard> cards = RuleRegistry.all().stream().map(rule -> rule.card()).toList();
    if (format == Format.json) {
      surroundings.out().print(Json.rules(cards));
    } else {
      for (RuleCard card : cards) {
        surroundings
            .out()
            .printf("%-7s %-8s %s%n", card.code(), card.severity().word(), card.purpose());
      }
      surroundings.out().println("\nExamples and sources: docs/reference/rules.md");
    }
    return Exit.FINE;
  }
}
