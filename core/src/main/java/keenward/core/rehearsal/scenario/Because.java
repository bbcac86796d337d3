package keenward.core.rehearsal.scenario;

import java.util.List;
import java.util.Optional;
import keenward.core.rehearsal.Behaviour;
import keenward.core.rehearsal.Input;

/**
 * Why something happened: from an input, step by step.
 *
 * @param atTenths when the input came, since the start of the script
 * @param input the input; empty when it goes back to before the script
 * @param steps the behaviours that led from it to what happened, in order
 */
public record Because(int atTenths, Optional<Input> input, List<Step> steps) {

  public Because {
    steps = List.copyOf(steps);
  }

  /**
   * One behaviour.
   *
   * @param atTenths when it came into play
   * @param behaviour which
   * @param subject index of what it is about
   * @param tenths the time that it went by
   * @param given what else it rests on
   */
  public record Step(
      int atTenths, Behaviour behaviour, int subject, int tenths, List<Because> given) {

    public Step {
      given = List.copyOf(given);
    }
  }
}
