package keenward.core.dialogue.machine;

import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.Screen;

/**
 * What the passing of time does: clocks run to the next deadline, and the deadline takes effect.
 */
final class Clockwork {
  private final Turn turn;

  private Clockwork(Turn turn) {
    this.turn = turn;
  }

  static void pass(Turn turn, int tenths) {
    new Clockwork(turn).pass(tenths);
  }

  private void pass(int tenths) {
    int rest = tenths;
    while (rest > 0 && turn.powered) {
      int step = Math.min(rest, untilNextDeadline());
      run(step);
      rest -= step;
      fire();
    }
  }

  private int untilNextDeadline() {
    int next = Integer.MAX_VALUE;
    if (idleRuns()) {
      next = Math.min(next, manners().idleTenths() - turn.idle);
    }
    if (tapRuns()) {
      next = Math.min(next, Math.max(1, tapPause() - turn.idle));
    }
    if (screenDeadline() > 0) {
      next = Math.min(next, screenDeadline() - turn.onScreen);
    }
    return Math.max(1, next);
  }

  private void run(int step) {
    turn.busy = Math.max(0, turn.busy - step);
    turn.deaf = Math.max(0, turn.deaf - step);
    turn.keypadsRestart = Math.max(0, turn.keypadsRestart - step);
    turn.sincePower = Math.min(turn.rules.longestWindowTenths + 1, turn.sincePower + step);
    if (idleRuns() || tapRuns()) {
      turn.idle += step;
    }
    if (screenDeadline() > 0) {
      turn.onScreen += step;
    }
  }

  private void fire() {
    if (tapRuns() && turn.idle >= tapPause()) {
      turn.typing = turn.typing.withPending("", 0);
    }
    if (screenDeadline() > 0 && turn.onScreen >= screenDeadline()) {
      turn.onScreen = 0;
      expire();
    } else if (idleRuns() && turn.idle >= manners().idleTenths()) {
      manners().idle().ifPresent(turn::leave);
    }
    if (!idleRuns() && !tapRuns()) {
      turn.idle = 0;
    }
  }

  private void expire() {
    Screen screen = turn.screen;
    if (screen.entry().isPresent() && screen.entry().get() instanceof Entry.Hear hear) {
      turn.idle = 0;
      turn.follow(hear.expired());
    } else if (screen.after().isPresent()) {
      turn.follow(screen.after().get().action());
    }
  }

  private boolean idleRuns() {
    return turn.screen.programming()
        && manners().idle().isPresent()
        && manners().idleTenths() > 0
        && !listening();
  }

  private boolean listening() {
    return turn.screen.entry().isPresent() && turn.screen.entry().get() instanceof Entry.Hear;
  }

  private boolean tapRuns() {
    return tapPause() > 0
        && !turn.typing.pending().isEmpty()
        && turn.screen.entry().isPresent()
        && turn.screen.entry().get() instanceof Entry.Lettered;
  }

  private int tapPause() {
    return turn.rules.description.keyMeanings().tapPauseTenths();
  }

  /** Time after which the screen does something by itself, or 0. */
  private int screenDeadline() {
    if (turn.screen.entry().isPresent() && turn.screen.entry().get() instanceof Entry.Hear hear) {
      return hear.waitTenths();
    }
    return turn.screen.after().map(Screen.Timed::tenths).orElse(0);
  }

  private Manners manners() {
    return turn.rules.description.manners();
  }
}
