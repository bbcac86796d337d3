package keenward.core.rehearsal;

import java.util.List;

/**
 * What an input leads to.
 *
 * @param state the state afterwards
 * @param outputs what the system did, in order
 */
public record Outcome(State state, List<Timed> outputs) {

  public Outcome {
    outputs = List.copyOf(outputs);
  }

  /**
   * Something that the system did.
   *
   * @param afterTenths how long after the start of the input, in tenths of a second
   * @param output what
   */
  public record Timed(int afterTenths, Output output) {}
}
