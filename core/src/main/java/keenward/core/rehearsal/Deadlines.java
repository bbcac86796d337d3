package keenward.core.rehearsal;

/**
 * Lets time pass and meets the deadlines on the way, in the order of {@link TimerKind} where
 * several fall together.
 */
final class Deadlines {

  private Deadlines() {}

  static void advance(Draft draft, int tenths) {
    int left = tenths;
    while (true) {
      int next = next(draft);
      if (next > left) {
        draft.passTime(left);
        return;
      }
      draft.passTime(next);
      left -= next;
      for (Layout.Timer timer : draft.layout.timers()) {
        // An earlier deadline of this instant may have stopped or restarted a later one.
        if (draft.value(timer.register()) == Draft.EXPIRED) {
          draft.put(timer.register(), 0);
          draft.resume(timer.register());
          meet(draft, timer.kind(), timer.subject());
          draft.leave();
        }
      }
    }
  }

  private static int next(Draft draft) {
    int next = Engine.NO_DEADLINE;
    for (Layout.Timer timer : draft.layout.timers()) {
      int left = draft.value(timer.register());
      if (left > 0 && left < next) {
        next = left;
      }
    }
    return next;
  }

  private static void meet(Draft draft, TimerKind kind, int subject) {
    switch (kind) {
      case START_UP -> Suspension.startedUp(draft);
      case HOLD -> Zones.held(draft, subject);
      case EXIT -> Exit.ended(draft, subject);
      case ENTRY -> Entry.ended(draft, subject);
      case CROSS_WINDOW -> CrossZones.windowEnded(draft, subject);
      case VERIFICATION -> LifeSafety.verificationEnded(draft, subject);
      case ABORT -> Reporting.abortWindowEnded(draft, subject);
      case BURGLARY_TONE -> Sounding.cutOff(draft, Tone.BURGLARY, subject);
      case FIRE_TONE -> Sounding.cutOff(draft, Tone.FIRE, subject);
      case GAS_TONE -> Sounding.cutOff(draft, Tone.CARBON_MONOXIDE, subject);
      case MEDICAL_TONE -> Sounding.cutOff(draft, Tone.MEDICAL, subject);
      case GAS_REPEAT -> LifeSafety.gasRepeats(draft, subject);
      case RECENT_CLOSING -> {
        // Only whether it runs matters.
      }
      case CANCEL -> Reporting.cancelWindowEnded(draft, subject);
      case SWINGER_RESET -> Swingers.reset(draft, subject);
      case SUPERVISION -> Radio.supervisionEnded(draft, subject);
      case MAINS_REPORT -> Supplies.mainsReportDue(draft);
      case BATTERY_TEST -> Supplies.batteryTested(draft);
      case LOCK_OUT -> Access.lockOutEnded(draft, subject);
      case ARMING_WARNING -> AutomaticArming.warn(draft, subject);
      case AUTOMATIC_ARMING -> AutomaticArming.due(draft, subject);
    }
  }
}
