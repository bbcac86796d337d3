package keenward.core.rules.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.quantities.Period;
import keenward.core.rules.Age;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A device, or its cell, is older than it may become. */
public final class PastItsLife implements Rule {

  private static final Period SMOKE_LIFE = new Period(120, "10 y");

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.RECORDS, 2, "past-its-life", Severity.WARNING)
          .source(Source.practice())
          .source(
              Source.memory(
                  "NFPA 72", "", "chapter 29: smoke detectors, 10 years from manufacture"))
          .purpose(
              "Adds the replacement age of a device, and the life of its cell, to the day it was fitted, and looks"
                  + " whether that day is past.")
          .consequence(
              "The device fails when it is needed, or its low-battery signals wake people up at night.")
          .limits(
              "Reckons from the day of fitting; a device was made earlier. Under `nfpa72-household` a smoke detector"
                  + " without a replacement age is given 10 years. Without a day to judge on, not assessed.")
          .parameter("life of a smoke detector under nfpa72-household", "10", "y")
          .remedy("Replace it, or its cell, and enter the new date as `fitted:`.")
          .broken(
              """
              keenward: 1
              site: Example
              devices:
                Store motion: { kind: motion, wiring: wired, replace after: 10 y, fitted: 2000-03-01 }
              zones:
                1: { name: Store, response: instant, device: Store motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              devices:
                Store motion: { kind: motion, wiring: wired, replace after: 10 y, fitted: 2026-10-02 }
              zones:
                1: { name: Store, response: instant, device: Store motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              devices:
                Store motion: { kind: motion, wiring: wired, replace after: 10 y, fitted: 2017-06-01 }
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
    SitePlan plan = input.plan();
    List<String> undated = new ArrayList<>();
    List<Device> aged = new ArrayList<>();
    for (Device device : plan.devices()) {
      boolean hasLife =
          replaceAfter(plan, device).isPresent() || device.traits().cellLife().isGiven();
      if (hasLife && device.fitted().isGiven()) {
        aged.add(device);
      } else if (hasLife) {
        undated.add(device.name());
      }
    }
    if (!undated.isEmpty()) {
      report.notAssessed(
          PlanPath.of("devices", undated.getFirst()),
          "the age of "
              + Words.count(undated.size(), "device")
              + ", since the plan does not say when "
              + Words.someNames(undated)
              + (undated.size() == 1 ? " was" : " were")
              + " fitted",
          "fitted: YYYY-MM-DD");
    }
    if (aged.isEmpty()) {
      return;
    }
    Optional<LocalDate> day = input.asOf();
    if (day.isEmpty()) {
      Age.dayMissing(
          PlanPath.of("devices"), "the age of " + Words.count(aged.size(), "device"), report);
      return;
    }
    for (Device device : aged) {
      LocalDate fitted = device.fitted().orElse(day.get());
      replaceAfter(plan, device)
          .ifPresent(
              life -> judge(device, "device ", "replace it", fitted, life, day.get(), report));
      device
          .traits()
          .cellLife()
          .find()
          .ifPresent(life ->
              judge(device, "the cell of ", "replace the cell", fitted, life, day.get(), report));
    }
  }

  private static void judge(
      Device device,
      String part,
      String work,
      LocalDate fitted,
      Period life,
      LocalDate day,
      Report report) {
    report.judged();
    LocalDate end = Age.end(fitted, life);
    if (day.isAfter(end)) {
      report.found(
          PlanPath.of("devices", device.name(), "fitted"),
          Words.capitalized(part + "'" + device.name() + "'")
              + " was fitted on "
              + fitted
              + " for "
              + life.written()
              + ": that was over on "
              + end
              + ".",
          Words.capitalized(work) + ", and enter the new date as `fitted:`.",
          Involved.devices(List.of(device.name())));
    }
  }

  private static Optional<Period> replaceAfter(SitePlan plan, Device device) {
    Fact<Period> stated = device.traits().replaceAfter();
    boolean isHouseholdSmoke =
        device.kind() == DeviceKind.SMOKE
            && plan.regimes().stream()
                .anyMatch(regime -> regime.standard() == Standard.NFPA72_HOUSEHOLD);
    return stated.find().or(() -> isHouseholdSmoke ? Optional.of(SMOKE_LIFE) : Optional.empty());
  }
}
