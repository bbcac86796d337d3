package keenward.core.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Device;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Partition;
import keenward.core.plan.Setting;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.reporting.Qualifier;
import keenward.core.reporting.ZoneEvents;

/** One step for each input that a zone uses, and for each lid that no zone uses. */
final class ZoneSteps {
  private static final int SENSOR_TAMPER = 383;
  private static final int BURGLARY_TAMPER = 137;
  private static final int SENSOR_TAMPER_ALARM = 144;

  private final TestContext context;
  private final List<MissingFact> missing = new ArrayList<>();

  ZoneSteps(TestContext context) {
    this.context = context;
  }

  /** The steps in the order of the plan. */
  List<TestStep> steps() {
    List<TestStep> steps = new ArrayList<>();
    for (Zone zone : context.plan().zones()) {
      if (zone.devices().isEmpty()) {
        missing.add(
            new MissingFact(
                zone.path(), "how zone " + zone.number() + " is made to respond", "device: ..."));
        steps.add(step(zone, Optional.empty(), ""));
      }
      Map<String, Integer> seen = new HashMap<>();
      for (ZoneDevice watched : zone.devices()) {
        String input = ZoneActions.input(watched);
        int count = seen.merge(input, 1, Integer::sum);
        steps.add(step(zone, Optional.of(watched), count == 1 ? input : input + " " + count));
      }
    }
    context.plan().devices().stream()
        .filter(ZoneActions::hasLid)
        .filter(device -> !isLidZoned(device))
        .forEach(device -> steps.add(lid(device)));
    return steps;
  }

  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  private TestStep step(Zone zone, Optional<ZoneDevice> watched, String input) {
    boolean armed = !zone.response().isAlwaysLive() && zone.response() != ZoneResponse.KEY_SWITCH;
    String action = watched.map(this::action).orElse("Make the zone respond.");
    return TestStep.of(
            armed ? Phase.ARMED : Phase.DISARMED,
            new TestSubject.ZoneInput(zone.number(), zone.name(), input),
            action + crossZone(zone))
        .in(context.partition(zone).number())
        .at(watched.flatMap(this::place))
        .given(precondition(zone, armed))
        .shows(keypad(zone))
        .signals(signals(zone))
        .cautions(cautions(zone, watched));
  }

  private String action(ZoneDevice watched) {
    return watched instanceof ZoneDevice.Fitted fitted && ZoneActions.isFirstInput(fitted)
        ? context
            .trip(fitted.device())
            .map(trip -> ZoneActions.slowOpening(fitted.device(), trip))
            .orElseGet(() -> ZoneActions.action(watched))
        : ZoneActions.action(watched);
  }

  private Optional<Place> place(ZoneDevice watched) {
    return watched instanceof ZoneDevice.Fitted fitted
        ? context.place(fitted.device().room())
        : Optional.empty();
  }

  private String precondition(Zone zone, boolean armed) {
    Partition partition = context.partition(zone);
    if (!armed) {
      return partition.name() + " disarmed, account on test";
    }
    ArmingMode mode =
        zone.liveModes().contains(ArmingMode.AWAY) ? ArmingMode.AWAY : zone.liveModes().getFirst();
    String how =
        partition.commonTo().isEmpty()
            ? partition.name() + " armed " + mode.word()
            : partition.name() + " armed by arming " + String.join(" and ", partition.commonTo());
    String exit = context.settings().get(Setting.EXIT_TIME).words();
    String alone =
        zone.response() == ZoneResponse.FOLLOWER
            ? ", entry zones left shut: alone, it alarms at once"
            : "";
    return how + ", exit time of " + exit + " over, account on test" + alone;
  }

  private String keypad(Zone zone) {
    String at = "At " + context.keypads(context.partition(zone)) + ": ";
    String name = "zone " + zone.number() + " \"" + zone.name() + "\"";
    return switch (zone.response()) {
      case ENTRY_EXIT -> at + entryDelay(zone) + ", then alarm of " + name;
      case HOLD_UP ->
          isSilent(zone)
              ? "Nothing is shown and nothing sounds, on purpose"
              : at + "hold-up alarm of " + name;
      case TECHNICAL -> at + "trouble of " + name + ", no burglary sounder";
      case TAMPER -> at + "tamper of " + name;
      case FIRE -> at + "fire alarm of " + name;
      case CARBON_MONOXIDE -> at + "carbon monoxide alarm of " + name;
      case MEDICAL -> at + "medical alarm of " + name;
      case KEY_SWITCH -> at + "exit time, then armed; the next turn disarms";
      default -> at + "alarm of " + name;
    };
  }

  private String entryDelay(Zone zone) {
    int number = zone.entryDelay().orElse(1);
    return context
        .settings()
        .findEntryDelay(number)
        .map(delay -> "entry time of " + delay.words())
        .orElse("entry time");
  }

  private List<ExpectedSignal> signals(Zone zone) {
    int partition = context.partition(zone).number();
    OptionalInt number = OptionalInt.of(zone.number());
    int code = ZoneEvents.of(context.plan(), zone).code();
    if (zone.response() == ZoneResponse.KEY_SWITCH) {
      // The number behind a key switch is that of its user, which the plan does not tell.
      return List.of(
          context.signal(
              Qualifier.RESTORE,
              code,
              List.of(),
              partition,
              OptionalInt.empty(),
              "after the exit time"),
          context.signal(
              Qualifier.NEW_EVENT,
              code,
              List.of(),
              partition,
              OptionalInt.empty(),
              "after the next turn"));
    }
    boolean tamper = zone.response() == ZoneResponse.TAMPER;
    List<ExpectedSignal> signals = new ArrayList<>();
    signals.add(
        context.signal(
            Qualifier.NEW_EVENT,
            tamper ? SENSOR_TAMPER : code,
            tamper ? List.of(code) : List.of(),
            partition,
            number,
            when(zone)));
    if (zone.reportsRestore().orElse(true)) {
      signals.add(
          context.signal(
              Qualifier.RESTORE,
              tamper ? SENSOR_TAMPER : code,
              tamper ? List.of(code) : List.of(),
              partition,
              number,
              "once it is at rest again"));
    }
    return signals;
  }

  private String when(Zone zone) {
    boolean burglary =
        switch (zone.response()) {
          case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> true;
          default -> false;
        };
    long abort = context.settings().get(Setting.ABORT_WINDOW).value();
    return burglary && abort > 0
        ? "after the abort window of "
            + context.settings().get(Setting.ABORT_WINDOW).words()
            + " (disarm only then)"
        : "";
  }

  private String crossZone(Zone zone) {
    return context.plan().panel().crossZones().stream()
        .filter(group -> group.zones().contains(zone.number()))
        .findFirst()
        .map(group ->
            " Cross-zoned: do the same at one of zones "
                + String.join(
                    ", ",
                    group.zones().stream()
                        .filter(number -> number != zone.number())
                        .map(number -> Integer.toString(number))
                        .toList())
                + group.window().find().map(window -> " within " + window.written()).orElse("")
                + "; alone it sends no alarm.")
        .orElse("");
  }

  private List<Caution> cautions(Zone zone, Optional<ZoneDevice> watched) {
    List<Caution> cautions = new ArrayList<>();
    switch (zone.response()) {
      case HOLD_UP -> {
        cautions.add(Caution.SENDS_HELP);
        if (!isSilent(zone)) {
          cautions.add(Caution.LOUD);
        }
      }
      case MEDICAL -> cautions.add(Caution.SENDS_HELP);
      case FIRE, CARBON_MONOXIDE -> {
        cautions.add(Caution.SENDS_HELP);
        cautions.add(Caution.LIFE_SAFETY);
        cautions.add(Caution.LOUD);
      }
      case TECHNICAL, KEY_SWITCH -> {
        // No help is sent and no burglary sounder starts.
      }
      default -> cautions.add(Caution.LOUD);
    }
    watched.ifPresent(each -> cautions.addAll(ZoneActions.cautions(each)));
    return cautions;
  }

  private static boolean isSilent(Zone zone) {
    return zone.silent().orElse(zone.response() == ZoneResponse.HOLD_UP);
  }

  private boolean isLidZoned(Device device) {
    return context.plan().zones().stream()
        .flatMap(zone -> zone.devices().stream())
        .anyMatch(watched ->
            ZoneActions.isLid(watched)
                && watched instanceof ZoneDevice.Fitted fitted
                && fitted.device().equals(device));
  }

  private TestStep lid(Device device) {
    Optional<Zone> zone = context.zoneOf(device);
    int partition = zone.map(each -> context.partition(each).number()).orElse(0);
    OptionalInt number =
        zone.map(each -> OptionalInt.of(each.number())).orElse(OptionalInt.empty());
    List<Caution> cautions = new ArrayList<>(List.of(Caution.LOUD));
    cautions.addAll(ZoneActions.lidCautions(device));
    return TestStep.of(
            Phase.DISARMED,
            new TestSubject.Item("lid of " + device.name()),
            "Open the lid of " + device.name() + ", then shut it.")
        .in(partition)
        .at(context.place(device.room()))
        .given("System disarmed, account on test")
        .shows("Tamper of " + device.name())
        .signals(
            context.eventAndRestore(
                SENSOR_TAMPER,
                List.of(BURGLARY_TAMPER, SENSOR_TAMPER_ALARM),
                partition,
                number,
                ""))
        .cautions(cautions);
  }
}
