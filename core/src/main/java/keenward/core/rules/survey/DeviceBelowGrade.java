package keenward.core.rules.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Regime;
import keenward.core.plan.Standard;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A device has a lower security grade than the system is to have. */
public final class DeviceBelowGrade implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 4, "device-below-grade", Severity.ERROR)
          .source(
              Source.read(
                  "EN 50131-1",
                  "",
                  "a subsystem has the grade of its lowest graded part",
                  "trade summary of EN 50131-1, early edition"))
          .purpose(
              "Compares the security grade of each intruder detector with the grade of the regime.")
          .consequence("The whole system, or its part, has only the grade of that device.")
          .limits(
              "Judges detectors that state a grade; those that state none are not assessed. Fire, carbon monoxide and"
                  + " technical devices have no security grade.")
          .remedy("Choose a device of the grade, or agree on a lower grade in writing.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 3
              devices:
                Store motion: { kind: motion, wiring: wired, security grade: 2 }
              zones:
                1: { name: Store, response: instant, device: Store motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 3
              devices:
                Store motion: { kind: motion, wiring: wired, security grade: 3 }
              zones:
                1: { name: Store, response: instant, device: Store motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 2
              devices:
                Store motion: { kind: motion, wiring: wired, security grade: 2 }
              zones:
                1: { name: Store, response: instant, device: Store motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Optional<Regime> regime =
        input.plan().regimes().stream()
            .filter(each -> each.standard() == Standard.EN50131)
            .findFirst();
    if (regime.isEmpty()) {
      return;
    }
    Optional<Integer> grade = regime.get().grade().find();
    if (grade.isEmpty()) {
      report.notAssessed(
          PlanPath.of("regime"),
          "whether devices have the grade of the system, since the regime states none",
          "regime: en50131 grade 2");
      return;
    }
    List<String> ungraded = new ArrayList<>();
    for (Device device : input.plan().devices()) {
      if (!Kinds.isIntruderDetector(device.kind())) {
        continue;
      }
      Optional<Integer> own = device.traits().securityGrade().find();
      if (own.isEmpty()) {
        ungraded.add(device.name());
        continue;
      }
      report.judged();
      if (own.get() < grade.get()) {
        report.found(
            PlanPath.of("devices", device.name(), "security grade"),
            "Device '"
                + device.name()
                + "' has grade "
                + own.get()
                + ", and the system is to have grade "
                + grade.get()
                + ".",
            "Choose a device of grade " + grade.get() + ".",
            Involved.devices(List.of(device.name())));
      }
    }
    if (!ungraded.isEmpty()) {
      report.notAssessed(
          PlanPath.of("devices", ungraded.getFirst()),
          "whether "
              + Words.someNames(ungraded)
              + (ungraded.size() == 1 ? " has" : " have")
              + " grade "
              + grade.get()
              + ", since the plan states no grade",
          "security grade: " + grade.get());
    }
  }
}
