package keenward.files.zonelist;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.files.Problem;
import keenward.files.shape.Fields;
import keenward.files.shape.ShapeReader;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;

/** Reads what a person says of a list of zones. */
public final class ListMapReader {

  private ListMapReader() {}

  /**
   * What became of a map's file.
   *
   * @param map the map; empty when anything is wrong with the file
   * @param problems everything wrong with it
   */
  public record Reading(Optional<ListMap> map, List<Problem> problems) {
    public Reading {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file's bytes; reports everything wrong in one go. */
  public static Reading read(String fileName, byte[] bytes) {
    YamlReading yaml = YamlReader.read(fileName, bytes);
    if (yaml.document().isEmpty()) {
      return new Reading(Optional.empty(), yaml.problems());
    }
    ShapeReader.Result<Fields> result = ShapeReader.read(yaml.document().get(), ListMapShape.ROOT);
    List<Problem> problems = result.context().problemsAfter(yaml.problems());
    return new Reading(
        problems.isEmpty() ? result.value().map(ListMapReader::map) : Optional.empty(), problems);
  }

  private static ListMap map(Fields root) {
    return new ListMap(
        root.find(ListMapShape.HEAD_ROW),
        root.find(ListMapShape.COLUMNS).orElse(Map.of()),
        root.find(ListMapShape.RESPONSES).orElse(Map.of()),
        root.find(ListMapShape.DEVICES).orElse(Map.of()));
  }
}
