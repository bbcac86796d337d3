package keenward.cli.command;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import keenward.usecases.job.JobOptions;
import keenward.usecases.order.FoundMemory;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that most commands share. */
final class JobChoices {

  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "How to print the result (default: ${DEFAULT-VALUE}).")
  Format format = Format.text;

  @Option(
      names = "--as-of",
      paramLabel = "YYYY-MM-DD",
      description = "The day on which ages are judged (default: today).")
  @Nullable LocalDate asOf;

  @Option(
      names = "--panel",
      paramLabel = "NAME|FILE",
      description = "A panel description that stands in for the plan's own.")
  @Nullable String panel;

  /** The options for a use case. */
  JobOptions options(Surroundings surroundings) {
    return options(surroundings, "defaults", null, List.of());
  }

  /** The options for a use case, with those of an order. */
  JobOptions options(
      Surroundings surroundings, String from, @Nullable String keypad, List<String> consents) {
    return new JobOptions(
        asOf == null ? surroundings.today() : asOf,
        panel,
        keypad,
        FoundMemory.of(from),
        new HashSet<>(consents));
  }

  boolean json() {
    return format == Format.json;
  }
}
