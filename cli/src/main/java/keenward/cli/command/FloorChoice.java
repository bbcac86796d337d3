package keenward.cli.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options of commands whose result can be drawn. */
final class FloorChoice {

  @Option(
      names = "--format",
      paramLabel = "text|json|svg",
      description = "How to print the result (default: ${DEFAULT-VALUE}).")
  PictureFormat format = PictureFormat.text;

  @Option(
      names = "--floor",
      paramLabel = "NAME",
      description = "The floor to draw with --format svg; needed where several are drawn.")
  @Nullable String floor;
}
