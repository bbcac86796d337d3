package keenward.core.dialogue.order;

import java.util.List;
import keenward.core.dialogue.machine.Display;

/**
 * A place from which a person can leave safely, with everything so far saved, and go on later.
 *
 * @param screen name of the screen
 * @param shows what the display shows
 * @param leave how to leave from here
 * @param comeBack how to come back here later
 */
public record StoppingPlace(
    String screen, Display shows, List<Instruction> leave, List<Instruction> comeBack) {
  public StoppingPlace {
    leave = List.copyOf(leave);
    comeBack = List.copyOf(comeBack);
  }
}
