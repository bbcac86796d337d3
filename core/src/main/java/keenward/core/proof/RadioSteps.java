package keenward.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Setting;
import keenward.core.plan.Wiring;
import keenward.core.plan.Zone;

/**
 * Supervision and cell of each radio device that stays on site; fobs leave it and are not
 * supervised.
 */
final class RadioSteps {
  private static final int SENSOR_LOST = 381;
  private static final int SUPERVISION_LOST = 355;
  private static final int CELL_LOW = 384;

  private final TestContext context;

  RadioSteps(TestContext context) {
    this.context = context;
  }

  List<TestStep> steps() {
    List<TestStep> steps = new ArrayList<>();
    for (Device device : context.plan().devices()) {
      boolean radio = device.traits().wiring().find().filter(Wiring.RADIO::equals).isPresent();
      if (radio && device.kind() != DeviceKind.FOB) {
        steps.add(silence(device));
        steps.add(cell(device));
      }
    }
    return steps;
  }

  private TestStep silence(Device device) {
    String supervision = context.settings().get(Setting.RADIO_SUPERVISION).words();
    return TestStep.of(
            Phase.SUPERVISED,
            new TestSubject.Item("radio silence of " + device.name()),
            "Take the cell out of "
                + device.name()
                + " for more than "
                + supervision
                + ", or use the panel's own supervision test. Put it back and make the device send.")
        .in(partition(device))
        .at(context.place(device.room()))
        .given("System disarmed, account on test")
        .shows("Missing: " + device.name())
        .signals(
            context.eventAndRestore(
                SENSOR_LOST,
                List.of(SUPERVISION_LOST),
                partition(device),
                number(device),
                "after " + supervision))
        .cautions(ZoneActions.lidCautions(device));
  }

  private TestStep cell(Device device) {
    return TestStep.of(
            Phase.SUPERVISED,
            new TestSubject.Item("low cell of " + device.name()),
            "Make "
                + device.name()
                + " report a low cell as its maker says; where its maker gives no way, write down \"not tested\".")
        .in(partition(device))
        .at(context.place(device.room()))
        .given("System disarmed, account on test")
        .shows("Low cell: " + device.name())
        .signals(
            context.eventAndRestore(CELL_LOW, List.of(), partition(device), number(device), ""))
        .cautions(ZoneActions.lidCautions(device));
  }

  private int partition(Device device) {
    Optional<Zone> zone = context.zoneOf(device);
    return zone.map(each -> context.partition(each).number()).orElse(0);
  }

  private OptionalInt number(Device device) {
    return context
        .zoneOf(device)
        .map(zone -> OptionalInt.of(zone.number()))
        .orElse(OptionalInt.empty());
  }
}
