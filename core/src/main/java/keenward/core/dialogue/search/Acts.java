package keenward.core.dialogue.search;

import java.util.List;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Act;

/** Acts tried out again. */
final class Acts {
  private Acts() {}

  static Run replay(Task task, State from, List<Act> acts) {
    Run run = new Run(task.interpreter, task.keypad.name(), from);
    for (Act act : acts) {
      replay(run, act);
    }
    return run;
  }

  static void replay(Run run, Act act) {
    switch (act) {
      case Act.Press press -> run.press(press.key(), press.times());
      case Act.EnterCode code -> run.press(Run.CODE + code.reference());
      case Act.Wait wait -> run.pause(wait.tenths());
      case Act.Transmit send -> {
        for (int time = 0; time < send.times(); time++) {
          run.transmit(send.serial(), send.part());
        }
      }
      case Act.PowerOff off -> run.cutPower();
      case Act.PowerOn on -> {
        // Comes back along with the other.
      }
    }
  }
}
