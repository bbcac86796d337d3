package keenward.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Supply;
import keenward.core.plan.ZoneResponse;

/** Mains, battery and enclosure of each supply. */
final class SupplySteps {
  private static final int MAINS_LOST = 301;
  private static final int MODULE_MAINS_LOST = 342;
  private static final int BATTERY_LOW = 302;
  private static final int BATTERY_TEST_FAILED = 309;
  private static final int BATTERY_MISSING = 311;
  private static final int MODULE_BATTERY_LOW = 338;

  private final TestContext context;

  SupplySteps(TestContext context) {
    this.context = context;
  }

  List<TestStep> steps() {
    List<TestStep> steps = new ArrayList<>();
    for (Supply supply : context.plan().supplies()) {
      steps.add(mains(supply));
      steps.add(battery(supply));
    }
    return steps;
  }

  List<MissingFact> missing() {
    List<MissingFact> missing = new ArrayList<>();
    if (context.plan().supplies().isEmpty()) {
      missing.add(
          new MissingFact(
              PlanPath.of("supplies"),
              "tests of mains failure and battery",
              "supplies: { Main: { battery: { capacity: ... Ah } } }"));
    }
    boolean enclosure =
        context.plan().zones().stream().anyMatch(zone -> zone.response() == ZoneResponse.TAMPER);
    if (!enclosure) {
      missing.add(
          new MissingFact(
              PlanPath.of("zones"),
              "the tamper of the panel's enclosure",
              nextZone() + ": { name: Panel lid, response: tamper, device: lid }"));
    }
    return missing;
  }

  private int nextZone() {
    return context.plan().zones().stream().mapToInt(zone -> zone.number()).max().orElse(0) + 1;
  }

  private boolean feedsPanel(Supply supply) {
    return context
        .plan()
        .panel()
        .supply()
        .orElse(context.plan().supplies().getFirst().name())
        .equals(supply.name());
  }

  private TestStep mains(Supply supply) {
    String delay = context.settings().get(Setting.MAINS_FAILURE_REPORT).words();
    boolean panel = feedsPanel(supply);
    return TestStep.of(
            Phase.SUPERVISED,
            new TestSubject.Item("mains of " + supply.name()),
            "Switch off the mains of "
                + supply.name()
                + " at its isolator. Read battery voltage and current. Wait "
                + delay
                + " for the report. Switch on again.")
        .at(context.place(supply.room()))
        .given("System disarmed, account on test, battery charged")
        .shows("Mains failure; everything goes on working from the battery")
        .signals(
            context.eventAndRestore(
                panel ? MAINS_LOST : MODULE_MAINS_LOST,
                List.of(),
                0,
                panel ? OptionalInt.of(0) : OptionalInt.empty(),
                "after " + delay))
        .cautions(List.of(Caution.MAINS));
  }

  private TestStep battery(Supply supply) {
    boolean panel = feedsPanel(supply);
    return TestStep.of(
            Phase.SUPERVISED,
            new TestSubject.Item("battery of " + supply.name()),
            "With the mains on, take one lead off the battery of "
                + supply.name()
                + ". Wait for the report, as long as the panel's manual says. Connect it again.")
        .at(context.place(supply.room()))
        .given("System disarmed, account on test, mains on")
        .shows("Battery fault")
        .signals(
            context.eventAndRestore(
                panel ? BATTERY_MISSING : MODULE_BATTERY_LOW,
                panel
                    ? List.of(BATTERY_LOW, BATTERY_TEST_FAILED)
                    : List.of(BATTERY_MISSING, BATTERY_LOW, BATTERY_TEST_FAILED),
                0,
                panel ? OptionalInt.of(0) : OptionalInt.empty(),
                "after the panel's next battery test"))
        .cautions(List.of(Caution.BATTERY));
  }
}
