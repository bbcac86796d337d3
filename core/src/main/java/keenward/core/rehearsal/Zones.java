package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** What a zone's violation and its end lead to, by response. */
final class Zones {

  private Zones() {}

  static void opened(Draft draft, int zone) {
    Radio.heard(draft, zone);
    if (draft.is(ZoneFlag.OPEN, zone)) {
      return;
    }
    draft.set(ZoneFlag.OPEN, zone);
    if (draft.isSuspended()) {
      draft.emit(Behaviour.NOT_WATCHED, zone, 0, new Output.NoEffect(zone));
      return;
    }
    int hold = draft.tables.model.zones().get(zone).holdTenths();
    if (hold == 0) {
      violated(draft, zone);
    } else {
      draft.enter(Behaviour.MUST_LAST, zone, hold);
      draft.start(draft.layout.holdLeft(zone), hold);
      draft.leave();
    }
  }

  /** A violation has lasted as long as it must. */
  static void held(Draft draft, int zone) {
    violated(draft, zone);
  }

  private static void violated(Draft draft, int zone) {
    Chime.opened(draft, zone);
    act(draft, zone);
  }

  static void closed(Draft draft, int zone) {
    Radio.heard(draft, zone);
    if (!draft.is(ZoneFlag.OPEN, zone)) {
      return;
    }
    draft.clear(ZoneFlag.OPEN, zone);
    if (draft.isSuspended()) {
      return;
    }
    int hold = draft.layout.holdLeft(zone);
    if (hold != SystemModel.NONE && draft.value(hold) != 0) {
      draft.put(hold, 0);
      draft.emit(Behaviour.DID_NOT_LAST, zone, 0, new Output.NoEffect(zone));
      return;
    }
    if (draft.tables.response(zone) == ZoneResponse.ENTRY_EXIT) {
      Exit.doorShut(draft, zone);
    }
    Bypassing.forcedZoneClosed(draft, zone);
    if (draft.tables.response(zone) == ZoneResponse.TAMPER) {
      Tampers.over(draft, zone);
    } else {
      Restores.atRest(draft, zone);
    }
  }

  /** Lets a violation count that is there now. */
  static void act(Draft draft, int zone) {
    switch (draft.tables.response(zone)) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> Intrusion.violated(draft, zone);
      case TWENTY_FOUR_HOUR -> Alarms.twentyFourHour(draft, zone);
      case HOLD_UP -> CallsForHelp.holdUp(draft, zone);
      case MEDICAL -> CallsForHelp.medical(draft, zone);
      case FIRE -> LifeSafety.fire(draft, zone);
      case CARBON_MONOXIDE -> LifeSafety.gas(draft, zone);
      case TAMPER -> Tampers.zoneOpened(draft, zone);
      case TECHNICAL -> Technical.limitPassed(draft, zone);
      case KEY_SWITCH -> KeySwitch.turned(draft, zone);
    }
  }

  /**
   * Whether an alarm of a zone is held back or was sent without its restore, so that no new one is
   * raised.
   */
  static boolean isUnderWay(Draft draft, int zone) {
    return draft.is(ZoneFlag.PENDING, zone) || draft.is(ZoneFlag.REPORTED, zone);
  }

  /** Says that a zone which somebody left out does nothing. */
  static boolean isLeftOut(Draft draft, int zone) {
    if (!draft.isLeftOut(zone)) {
      return false;
    }
    draft.emit(Behaviour.LEFT_OUT_DOES_NOTHING, zone, 0, new Output.NoEffect(zone));
    return true;
  }

  /** Lets everything count that happened while zones were not watched and is still there. */
  static void lookAtAll(Draft draft) {
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      if (draft.is(ZoneFlag.LID_OPEN, zone)) {
        Tampers.opened(draft, zone);
      }
      boolean open = draft.is(ZoneFlag.OPEN, zone);
      if (!open) {
        Restores.atRest(draft, zone);
      } else if (!isUnderWay(draft, zone) && !draft.isLeftOut(zone)) {
        boolean always = draft.tables.response(zone).isAlwaysLive();
        if (always && !draft.tables.has(Option.LEAVING_PROGRAMMING_ALARMS)) {
          draft.enter(Behaviour.FOUND_OPEN_IS_TROUBLE, zone, 0);
          Technical.showTrouble(draft, zone, Notice.TROUBLE);
          draft.leave();
        } else if (always || Intrusion.isFor(draft.tables.response(zone))) {
          draft.enter(Behaviour.FOUND_OPEN, zone, 0);
          act(draft, zone);
          draft.leave();
        }
      }
    }
  }
}
