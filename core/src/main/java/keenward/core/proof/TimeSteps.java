package keenward.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;

/** Exit, entry, abort and sounder times, measured with a watch against those in force. */
final class TimeSteps {
  private final TestContext context;
  private final List<MissingFact> missing = new ArrayList<>();

  TimeSteps(TestContext context) {
    this.context = context;
  }

  List<MissingFact> missing() {
    return List.copyOf(missing);
  }

  List<TestStep> steps() {
    List<TestStep> steps = new ArrayList<>();
    if (context.plan().zones().stream().allMatch(zone -> zone.response().isAlwaysLive())) {
      return steps;
    }
    steps.add(
        time(
            "exit time",
            "Arm away and measure from arming to armed.",
            context.settings().get(Setting.EXIT_TIME)));
    for (int number : entryDelays()) {
      context
          .settings()
          .findEntryDelay(number)
          .ifPresentOrElse(
              delay ->
                  steps.add(
                      time(
                          "entry delay " + number,
                          "With the system armed, open an entry zone that starts entry delay "
                              + number
                              + " and measure to the alarm.",
                          delay)),
              () ->
                  missing.add(
                      new MissingFact(
                          PlanPath.of("panel", "entry delays"),
                          "entry delay " + number + ", which a zone starts",
                          number + ": ... s")));
    }
    if (context.settings().get(Setting.ABORT_WINDOW).value() > 0) {
      steps.add(
          time(
              "abort window",
              "Measure from the alarm to the signal at the centre; then disarm once inside the window and see that"
                  + " no signal comes.",
              context.settings().get(Setting.ABORT_WINDOW)));
    }
    boolean sounds =
        context.plan().devices().stream()
            .anyMatch(
                device -> device.kind() == DeviceKind.SIREN || device.kind() == DeviceKind.SOUNDER);
    if (sounds) {
      steps.add(
          time(
                  "sounder time",
                  "Let an alarm run and measure until the sounders stop.",
                  context.settings().get(Setting.SOUNDER_TIME))
              .cautions(List.of(Caution.LOUD)));
    }
    return steps;
  }

  private Set<Integer> entryDelays() {
    Set<Integer> numbers = new TreeSet<>();
    for (Zone zone : context.plan().zones()) {
      if (zone.response() == ZoneResponse.ENTRY_EXIT) {
        numbers.add(zone.entryDelay().orElse(1));
      }
    }
    return numbers;
  }

  private static TestStep time(String name, String action, Settings.Resolved resolved) {
    return TestStep.of(Phase.TIMES, new TestSubject.Item(name), action)
        .given("Account on test")
        .shows(resolved.words() + ", from " + resolved.source())
        .measures(new MeasuredTime(resolved.value(), resolved.words(), resolved.source()));
  }
}
