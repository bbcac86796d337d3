package keenward.core.rehearsal;

/** Cross-zoning: two zones of a group have to see something within the window. */
final class CrossZones {

  private CrossZones() {}

  /** Deals with a violation that does not count by itself; whether it was one. */
  static boolean takes(Draft draft, int zone) {
    int group = draft.tables.group(zone);
    if (group == SystemModel.NONE || isConfirmed(draft, group) || partnersOut(draft, group, zone)) {
      return false;
    }
    int window = draft.layout.windowLeft(group);
    int first = draft.value(draft.layout.windowZone(group)) - 1;
    if (draft.value(window) == 0) {
      int tenths = draft.tables.model.crossGroups().get(group).windowTenths();
      draft.put(draft.layout.windowZone(group), zone + 1);
      draft.enter(Behaviour.CROSS_WINDOW_OPENS, zone, tenths);
      draft.start(window, tenths);
      draft.emit(new Output.NoEffect(zone));
      draft.leave();
    } else if (first == zone && !draft.tables.has(Option.CROSS_ZONE_REPEAT_COUNTS)) {
      draft.emit(Behaviour.CROSS_ZONE_SAME_AGAIN, zone, 0, new Output.NoEffect(zone));
    } else {
      draft.enter(Behaviour.CROSS_ZONE_CONFIRMED, zone, 0);
      draft.given(window);
      closeWindow(draft, group);
      if (first != zone) {
        Alarms.count(draft, first);
      }
      Alarms.count(draft, zone);
      draft.leave();
    }
    return true;
  }

  /** Whether the group has had its alarm since it was armed. */
  private static boolean isConfirmed(Draft draft, int group) {
    for (int zone : draft.tables.model.crossGroups().get(group).zones()) {
      if (draft.is(ZoneFlag.ALARMED, zone)) {
        return true;
      }
    }
    return false;
  }

  private static boolean partnersOut(Draft draft, int group, int zone) {
    if (!draft.tables.has(Option.CROSS_ZONE_ALONE_WHEN_PARTNERS_OUT)) {
      return false;
    }
    for (int partner : draft.tables.model.crossGroups().get(group).zones()) {
      if (partner != zone && !draft.isLeftOut(partner)) {
        return false;
      }
    }
    return true;
  }

  private static void closeWindow(Draft draft, int group) {
    draft.put(draft.layout.windowLeft(group), 0);
    draft.put(draft.layout.windowZone(group), 0);
  }

  /** No second zone has confirmed the first. */
  static void windowEnded(Draft draft, int group) {
    int first = draft.value(draft.layout.windowZone(group)) - 1;
    closeWindow(draft, group);
    draft.emit(
        Behaviour.CROSS_ZONE_ALONE,
        first,
        0,
        new Output.Signal(
            SignalCodes.CROSS_ZONE_ALONE,
            SignalCodes.NEW,
            draft.tables.partition(first),
            first,
            SystemModel.NONE));
  }

  /** Windows that a partition opened end with its disarming, unreported. */
  static void close(Draft draft, int partition) {
    for (int group = 0; group < draft.tables.model.crossGroups().size(); group++) {
      int first = draft.value(draft.layout.windowZone(group)) - 1;
      if (first != SystemModel.NONE && draft.tables.partition(first) == partition) {
        closeWindow(draft, group);
      }
    }
  }
}
