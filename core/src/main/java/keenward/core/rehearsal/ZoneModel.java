package keenward.core.rehearsal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;

/**
 * A zone as the machine knows it. Zones are named by their index in {@link SystemModel#zones()}.
 *
 * @param number number at the panel and in signals, from 1
 * @param name name at the keypad
 * @param response what its violation does
 * @param partition index of its partition
 * @param liveIn arming modes in which it is live
 * @param delays entry delay it starts, by mode
 * @param traits what else it may do
 * @param swingerLimit alarms of one arming period that are reported; 0 means no limit
 * @param holdTenths how long a violation must last before it counts, in tenths of a second
 * @param releasedBy indexes of the entry zones that release a follower; empty means any
 * @param eventCode DC-05 event code of its alarm
 */
public record ZoneModel(
    int number,
    String name,
    ZoneResponse response,
    int partition,
    Set<ArmingMode> liveIn,
    EntryDelays delays,
    Set<ZoneTrait> traits,
    int swingerLimit,
    int holdTenths,
    List<Integer> releasedBy,
    int eventCode) {

  public ZoneModel {
    if (swingerLimit < 0 || holdTenths < 0) {
      throw new IllegalArgumentException(
          "zone " + number + ": swinger limit and hold time are not negative");
    }
    liveIn = Set.copyOf(liveIn);
    traits = Set.copyOf(traits);
    releasedBy = List.copyOf(releasedBy);
  }

  /**
   * A zone of the first partition, live by its response, whose restore is reported and that has no
   * other trait.
   */
  public static ZoneModel of(int number, String name, ZoneResponse response, int eventCode) {
    return new ZoneModel(
        number,
        name,
        response,
        0,
        Set.copyOf(response.usualModes()),
        EntryDelays.NONE,
        Set.of(ZoneTrait.RESTORE_REPORTED),
        0,
        0,
        List.of(),
        eventCode);
  }

  /** The same zone in another partition. */
  public ZoneModel inPartition(int index) {
    return new ZoneModel(
        number,
        name,
        response,
        index,
        liveIn,
        delays,
        traits,
        swingerLimit,
        holdTenths,
        releasedBy,
        eventCode);
  }

  /** The same zone, live in these modes. */
  public ZoneModel liveIn(ArmingMode... modes) {
    return new ZoneModel(
        number,
        name,
        response,
        partition,
        Set.of(modes),
        delays,
        traits,
        swingerLimit,
        holdTenths,
        releasedBy,
        eventCode);
  }

  /** The same zone with these entry delays. */
  public ZoneModel delayed(EntryDelays entryDelays) {
    return new ZoneModel(
        number,
        name,
        response,
        partition,
        liveIn,
        entryDelays,
        traits,
        swingerLimit,
        holdTenths,
        releasedBy,
        eventCode);
  }

  /** The same zone with one more trait. */
  public ZoneModel with(ZoneTrait trait) {
    Set<ZoneTrait> more = EnumSet.of(trait);
    more.addAll(traits);
    return withTraits(more);
  }

  /** The same zone with one trait less. */
  public ZoneModel without(ZoneTrait trait) {
    List<ZoneTrait> fewer = new ArrayList<>(traits);
    fewer.remove(trait);
    return withTraits(Set.copyOf(fewer));
  }

  private ZoneModel withTraits(Set<ZoneTrait> others) {
    return new ZoneModel(
        number,
        name,
        response,
        partition,
        liveIn,
        delays,
        others,
        swingerLimit,
        holdTenths,
        releasedBy,
        eventCode);
  }

  /** The same zone with this swinger limit. */
  public ZoneModel swingerLimit(int limit) {
    return new ZoneModel(
        number,
        name,
        response,
        partition,
        liveIn,
        delays,
        traits,
        limit,
        holdTenths,
        releasedBy,
        eventCode);
  }

  /** The same zone, whose violation must last this long, in tenths of a second. */
  public ZoneModel held(int tenths) {
    return new ZoneModel(
        number,
        name,
        response,
        partition,
        liveIn,
        delays,
        traits,
        swingerLimit,
        tenths,
        releasedBy,
        eventCode);
  }

  /** The same follower, released by these entry zones only. */
  public ZoneModel releasedBy(Integer... zones) {
    return new ZoneModel(
        number,
        name,
        response,
        partition,
        liveIn,
        delays,
        traits,
        swingerLimit,
        holdTenths,
        List.of(zones),
        eventCode);
  }
}
