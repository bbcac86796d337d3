package keenward.files.panel;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.machine.Memory;
import keenward.files.Problem;

/**
 * What became of a found memory's file.
 *
 * @param memory the memory; empty when anything is wrong with the file
 * @param problems everything wrong with it, in the order of the file
 */
public record FoundReading(Optional<Memory> memory, List<Problem> problems) {
  public FoundReading {
    problems = List.copyOf(problems);
  }
}
