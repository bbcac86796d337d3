package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** Leaving zones out: by a user, by forced arming, by a technician. */
final class Bypassing {

  private Bypassing() {}

  static void ordered(Draft draft, int user, int keypad, int zone) {
    if (!mayAsk(draft, user, keypad, zone)) {
      return;
    }
    if (!draft.tables.has(ZoneTrait.BYPASSABLE, zone)) {
      Access.refuse(draft, Behaviour.NOT_BYPASSABLE_REFUSED, keypad, Notice.NOT_BYPASSABLE, zone);
    } else if (!draft.is(ZoneFlag.BYPASSED, zone)) {
      draft.set(ZoneFlag.BYPASSED, zone);
      signal(draft, zone, SignalCodes.NEW, Behaviour.BYPASSED, Notice.LEFT_OUT, user);
    }
  }

  static void endOrdered(Draft draft, int user, int keypad, int zone) {
    if (!mayAsk(draft, user, keypad, zone)) {
      return;
    }
    if (!draft.is(ZoneFlag.BYPASSED, zone)) {
      Access.refuse(draft, Behaviour.NOT_BYPASSED_REFUSED, keypad, Notice.NOT_BYPASSED, zone);
    } else {
      draft.clear(ZoneFlag.BYPASSED, zone);
      signal(
          draft, zone, SignalCodes.RESTORE, Behaviour.BYPASS_ENDED_BY_USER, Notice.BACK_IN, user);
    }
  }

  private static boolean mayAsk(Draft draft, int user, int keypad, int zone) {
    if (!Access.admits(draft, keypad)) {
      return false;
    }
    int partition = draft.tables.partition(zone);
    UserModel asking = draft.tables.model.users().get(user);
    long reach = draft.tables.mayArm(user) | draft.tables.mayDisarm(user);
    long needed =
        draft.tables.isCommon(partition) ? draft.tables.sharers(partition) : 1L << partition;
    if (!asking.mayBypass() || (reach & needed) == 0) {
      Access.refuse(draft, Behaviour.NO_AUTHORITY, keypad, Notice.NO_AUTHORITY, partition);
      return false;
    }
    if (draft.isArmed(partition)) {
      Access.refuse(draft, Behaviour.ARMED_BYPASS_REFUSED, keypad, Notice.ARMED_NO_BYPASS, zone);
      return false;
    }
    return true;
  }

  static void isolation(Draft draft, int user, int zone, boolean out) {
    if (!draft.tables.model.users().get(user).technician()) {
      Access.refuse(
          draft,
          Behaviour.TECHNICIAN_NEEDED,
          SystemModel.NONE,
          Notice.TECHNICIAN_ONLY,
          SystemModel.NONE);
    } else if (draft.is(ZoneFlag.ISOLATED, zone) != out) {
      draft.set(ZoneFlag.ISOLATED, zone, out);
      signal(
          draft,
          zone,
          out ? SignalCodes.NEW : SignalCodes.RESTORE,
          out ? Behaviour.ISOLATED : Behaviour.ISOLATION_ENDED,
          out ? Notice.LEFT_OUT : Notice.BACK_IN,
          user);
    }
  }

  /** Shows and reports that a zone is left out or watched again. */
  static void signal(
      Draft draft, int zone, int qualifier, Behaviour behaviour, Notice notice, int user) {
    int partition = draft.tables.partition(zone);
    draft.enter(behaviour, zone, 0);
    draft.emit(new Output.Display(partition, notice, zone, 0));
    draft.emit(
        new Output.Signal(code(draft.tables.response(zone)), qualifier, partition, zone, user));
    draft.leave();
  }

  private static int code(ZoneResponse response) {
    return switch (response) {
      case FIRE -> SignalCodes.FIRE_BYPASS;
      case TWENTY_FOUR_HOUR -> SignalCodes.TWENTY_FOUR_HOUR_BYPASS;
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> SignalCodes.BURGLARY_BYPASS;
      default -> SignalCodes.BYPASS;
    };
  }

  /** A zone is shut; if forced arming left it out, it may be watched again. */
  static void forcedZoneClosed(Draft draft, int zone) {
    if (draft.is(ZoneFlag.FORCED, zone) && draft.tables.has(Option.FORCED_ZONES_RETURN)) {
      draft.clear(ZoneFlag.FORCED, zone);
      signal(
          draft,
          zone,
          SignalCodes.RESTORE,
          Behaviour.FORCED_ZONE_RETURNS,
          Notice.BACK_IN,
          SystemModel.NONE);
    }
  }

  /** Disarming takes every zone of a partition back in, except those that a technician took out. */
  static void ended(Draft draft, int partition, int user) {
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.is(ZoneFlag.BYPASSED, zone) || draft.is(ZoneFlag.FORCED, zone)) {
        draft.clear(ZoneFlag.BYPASSED, zone);
        draft.clear(ZoneFlag.FORCED, zone);
        signal(draft, zone, SignalCodes.RESTORE, Behaviour.BYPASS_ENDED, Notice.BACK_IN, user);
      }
    }
  }
}
