package keenward.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import keenward.core.quantities.Resistance;

/** Builds a zone of a test's plan. */
public final class ZoneBuilder {
  private final int number;
  private final String name;
  private final ZoneResponse response;
  private List<String> partitions = List.of();
  private final List<Function<Map<String, Device>, ZoneDevice>> devices = new ArrayList<>();
  private Fact<LoopWiring> wiring = Fact.missing();
  private List<Resistance> resistors = List.of();
  private List<ArmingMode> liveIn = List.of();
  private Fact<LoopCable> loopCable = Fact.missing();
  private Fact<ContactForm> contact = Fact.missing();
  private Fact<Integer> entryDelay = Fact.missing();
  private Fact<Boolean> mayBypass = Fact.missing();
  private Fact<Boolean> mayForceArm = Fact.missing();
  private Fact<Boolean> silent = Fact.missing();
  private List<Integer> follows = List.of();
  private Fact<Integer> event = Fact.missing();
  private Fact<Boolean> reportsRestore = Fact.missing();
  private Fact<String> reason = Fact.missing();

  ZoneBuilder(int number, String name, ZoneResponse response) {
    this.number = number;
    this.name = name;
    this.response = response;
  }

  public ZoneBuilder in(String... names) {
    partitions = Arrays.asList(names);
    return this;
  }

  /** Watches the first input of a device of the plan. */
  public ZoneBuilder device(String device) {
    devices.add(built -> new ZoneDevice.Fitted(find(built, device), Fact.missing()));
    return this;
  }

  public ZoneBuilder device(String device, String input) {
    devices.add(built -> new ZoneDevice.Fitted(find(built, device), Fact.of(input)));
    return this;
  }

  /** Watches a device that has no place in the plan yet. */
  public ZoneBuilder kind(DeviceKind kind) {
    devices.add(built -> new ZoneDevice.Unplaced(kind));
    return this;
  }

  public ZoneBuilder wiring(LoopWiring loop, String... values) {
    wiring = Fact.of(loop);
    resistors = Arrays.stream(values).map(text -> Quantities.of(Resistance.parse(text))).toList();
    return this;
  }

  public ZoneBuilder contact(ContactForm form) {
    contact = Fact.of(form);
    return this;
  }

  public ZoneBuilder liveIn(ArmingMode... modes) {
    liveIn = Arrays.asList(modes);
    return this;
  }

  public ZoneBuilder entryDelay(int delay) {
    entryDelay = Fact.of(delay);
    return this;
  }

  public ZoneBuilder mayBypass(boolean yes) {
    mayBypass = Fact.of(yes);
    return this;
  }

  public ZoneBuilder mayForceArm(boolean yes) {
    mayForceArm = Fact.of(yes);
    return this;
  }

  public ZoneBuilder silent(boolean yes) {
    silent = Fact.of(yes);
    return this;
  }

  public ZoneBuilder follows(Integer... entryZones) {
    follows = Arrays.asList(entryZones);
    return this;
  }

  public ZoneBuilder event(int code) {
    event = Fact.of(code);
    return this;
  }

  public ZoneBuilder restore(boolean reported) {
    reportsRestore = Fact.of(reported);
    return this;
  }

  public ZoneBuilder reason(String text) {
    reason = Fact.of(text);
    return this;
  }

  public ZoneBuilder loopCable(String length, String conductor) {
    loopCable =
        Fact.of(
            new LoopCable(
                Fact.of(Quantities.of(Length.parse(length))),
                Fact.of(Quantities.of(Conductor.parse(conductor)))));
    return this;
  }

  Zone build(Map<String, Device> built, List<String> allPartitions) {
    return new Zone(
        number,
        name,
        response,
        partitions.isEmpty() ? List.of(allPartitions.getFirst()) : partitions,
        devices.stream().map(device -> device.apply(built)).toList(),
        wiring,
        resistors,
        contact,
        loopCable,
        liveIn,
        entryDelay,
        mayBypass,
        mayForceArm,
        Fact.missing(),
        Fact.missing(),
        silent,
        follows,
        event,
        reportsRestore,
        reason,
        Fact.missing());
  }

  private static Device find(Map<String, Device> built, String device) {
    return Objects.requireNonNull(built.get(device), "no device " + device);
  }
}
