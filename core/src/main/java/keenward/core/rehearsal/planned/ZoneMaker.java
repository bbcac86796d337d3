package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.EntryDelays;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.rehearsal.ZoneTrait;
import keenward.core.reporting.ZoneEvents;

/** Makes the zones of the system. */
final class ZoneMaker {

  private final SitePlan plan;
  private final Settings settings;
  private final Areas areas;
  private final Tenths tenths;
  private final List<Assumption> assumptions;
  private final Map<Integer, Integer> indexes = new HashMap<>();

  /** Turns milliseconds of a place in the plan into tenths of a second. */
  @FunctionalInterface
  interface Tenths {
    int of(long milliseconds, PlanPath place);
  }

  ZoneMaker(
      SitePlan plan, Settings settings, Areas areas, Tenths tenths, List<Assumption> assumptions) {
    this.plan = plan;
    this.settings = settings;
    this.areas = areas;
    this.tenths = tenths;
    this.assumptions = assumptions;
    for (int index = 0; index < plan.zones().size(); index++) {
      indexes.put(plan.zones().get(index).number(), index);
    }
  }

  ZoneModel make(Zone zone) {
    return new ZoneModel(
        zone.number(),
        zone.name(),
        zone.response(),
        areas.areaOf(zone.partitions()),
        Set.copyOf(zone.liveModes()),
        delays(zone),
        traits(zone),
        swingerLimit(zone),
        0,
        releasedBy(zone),
        ZoneEvents.of(plan, zone).code());
  }

  private int swingerLimit(Zone zone) {
    long limit =
        zone.swingerLimit()
            .map(Integer::longValue)
            .orElse(settings.get(Setting.SWINGER_LIMIT).value());
    return Math.clamp(limit, 0, Integer.MAX_VALUE);
  }

  /** A follower's own delay counts where people walk about inside: armed stay or for the night. */
  private EntryDelays delays(Zone zone) {
    if (zone.response() == ZoneResponse.ENTRY_EXIT) {
      return EntryDelays.always(delay(zone, zone.entryDelay().orElse(1)));
    }
    if (zone.response() == ZoneResponse.FOLLOWER && zone.entryDelay().isGiven()) {
      int delay = delay(zone, zone.entryDelay().orElse(1));
      return new EntryDelays(0, delay, delay);
    }
    return EntryDelays.NONE;
  }

  private int delay(Zone zone, int number) {
    Settings.Resolved known =
        settings
            .findEntryDelay(number)
            .orElseGet(() -> {
              Settings.Resolved first = settings.get(Setting.ENTRY_DELAY);
              assumptions.add(
                  new Assumption(
                      zone.path().then("entry delay"),
                      "there is no entry delay "
                          + number
                          + "; "
                          + first.words()
                          + " of entry delay "
                          + first.index()
                          + " is taken"));
              return first;
            });
    return tenths.of(known.value(), known.path());
  }

  private Set<ZoneTrait> traits(Zone zone) {
    Set<ZoneTrait> traits = EnumSet.noneOf(ZoneTrait.class);
    ZoneResponse response = zone.response();
    boolean burglary = !response.isAlwaysLive() && response != ZoneResponse.KEY_SWITCH;
    boolean mayWait = burglary || response == ZoneResponse.TWENTY_FOUR_HOUR;
    add(traits, ZoneTrait.ABORTABLE, mayWait);
    add(traits, ZoneTrait.BYPASSABLE, zone.mayBypass().orElse(burglary));
    add(traits, ZoneTrait.FORCEABLE, zone.mayForceArm().orElse(false));
    add(traits, ZoneTrait.CHIME, zone.chime().orElse(false));
    add(traits, ZoneTrait.SILENT, zone.silent().orElse(response == ZoneResponse.HOLD_UP));
    add(traits, ZoneTrait.RESTORE_REPORTED, zone.reportsRestore().orElse(true));
    for (ZoneDevice device : zone.devices()) {
      if (device instanceof ZoneDevice.Fitted fitted) {
        DeviceTraits fittedTraits = fitted.device().traits();
        if (fittedTraits.wiring().orNull() == Wiring.RADIO) {
          traits.add(ZoneTrait.RADIO);
        }
        if (response == ZoneResponse.FIRE && fittedTraits.latching().orElse(false)) {
          traits.add(ZoneTrait.LATCHING);
        }
      }
    }
    return traits;
  }

  private static void add(Set<ZoneTrait> traits, ZoneTrait trait, boolean yes) {
    if (yes) {
      traits.add(trait);
    }
  }

  private List<Integer> releasedBy(Zone zone) {
    List<Integer> released = new ArrayList<>();
    for (int number : zone.follows()) {
      Integer index = indexes.get(number);
      if (index != null) {
        released.add(index);
      }
    }
    return released;
  }
}
