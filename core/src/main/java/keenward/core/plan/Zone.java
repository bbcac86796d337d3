package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Resistance;

/**
 * A zone: what the panel watches under one number.
 *
 * @param number number at the panel and in signals, from 1
 * @param name name at the keypad and on paper
 * @param response what the system does when it is violated
 * @param partitions names of the partitions it belongs to; never empty (the only partition when the
 *     plan has none)
 * @param devices what it watches; empty when the plan does not say
 * @param wiring how the loop is supervised; nothing for radio and bus devices
 * @param resistors resistor values of the loop
 * @param contact state of the contact at rest
 * @param loopCable the cable of its loop
 * @param liveIn arming modes in which it is live; empty means by its response
 * @param entryDelay number of the entry delay it starts
 * @param mayBypass whether a user may leave it out
 * @param mayForceArm whether the system may arm while it is open
 * @param chime whether opening it while disarmed chimes
 * @param swingerLimit its own limit of reported alarms in one arming period
 * @param silent whether its alarm is silent on site
 * @param follows zone numbers of the entry zones that release a follower; empty means any
 * @param event DC-05 event code, three digits; missing means by response and device
 * @param reportsRestore whether the restore is reported
 * @param reason why a choice that the checks would question is right here
 * @param note anything else
 */
public record Zone(
    int number,
    String name,
    ZoneResponse response,
    List<String> partitions,
    List<ZoneDevice> devices,
    Fact<LoopWiring> wiring,
    List<Resistance> resistors,
    Fact<ContactForm> contact,
    Fact<LoopCable> loopCable,
    List<ArmingMode> liveIn,
    Fact<Integer> entryDelay,
    Fact<Boolean> mayBypass,
    Fact<Boolean> mayForceArm,
    Fact<Boolean> chime,
    Fact<Integer> swingerLimit,
    Fact<Boolean> silent,
    List<Integer> follows,
    Fact<Integer> event,
    Fact<Boolean> reportsRestore,
    Fact<String> reason,
    Fact<String> note) {

  public Zone {
    partitions = List.copyOf(partitions);
    devices = List.copyOf(devices);
    resistors = List.copyOf(resistors);
    liveIn = List.copyOf(liveIn);
    follows = List.copyOf(follows);
  }

  /** Its place in the plan. */
  public PlanPath path() {
    return PlanPath.of("zones", number);
  }

  /** The modes in which it is live once armed: as stated, or by its response. */
  public List<ArmingMode> liveModes() {
    return liveIn.isEmpty() ? response.usualModes() : liveIn;
  }
}
