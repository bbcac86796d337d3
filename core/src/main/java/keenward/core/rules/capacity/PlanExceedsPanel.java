package keenward.core.rules.capacity;

import java.util.Optional;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.planned.CannotExpress;
import keenward.core.dialogue.planned.PlannedMemory;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The plan asks for something that the panel cannot hold. */
public final class PlanExceedsPanel implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CAPACITY, 1, "plan-exceeds-panel", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Compares the plan with what the panel description says that the panel can hold: numbers of zones by"
                  + " their connection, partitions, users, keypads, responses, options, names, times.")
          .consequence(
              "The job stops at the keypad: the value cannot be entered, or becomes another one.")
          .limits(
              "Judges what the description states; expanders that make a panel larger have to be in it. A fact for"
                  + " which the panel has no setting at all is a warning, since it may do the right thing by itself."
                  + " Without a description nothing is assessed.")
          .remedy("Change the plan, choose a larger panel, or add the expander to the description.")
          .broken(
              """
              keenward: 1
              site: Example
              panel: { description: Marram 32 }
              devices:
                Front contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              users:
                1:  { name: Bram, role: master }
                99: { name: Technician, role: technician }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              panel: { description: Marram 32 }
              devices:
                Front contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              users:
                1: { name: Bram, role: master }
                2: { name: Technician, role: technician }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              panel: { description: Marram 32 }
              devices:
                Front contact: { kind: contact, wiring: wired }
              zones:
                32: { name: Front door, response: entry-exit, device: Front contact }
              users:
                1: { name: Bram, role: master }
                2: { name: Technician, role: technician }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Optional<PlannedMemory> memory = input.plannedMemory();
    if (memory.isEmpty() || input.panel().isEmpty()) {
      report.notAssessed(
          PlanPath.of("panel", "description"),
          "whether the panel holds the plan, since "
              + input
                  .plan()
                  .panel()
                  .description()
                  .map(name -> "the description '" + name + "' is not at hand")
                  .orElse("no panel description is named"),
          "panel: { description: ... }");
      return;
    }
    report.judged(memory.get().wanted().size());
    memory.get().cannotExpress().forEach(each -> report(each, report));
    keypads(input.plan(), input.panel().get(), report);
  }

  private static void report(CannotExpress cannot, Report report) {
    report.judged();
    report.found(
        cannot.lacksSetting() ? Severity.WARNING : Severity.ERROR,
        cannot.place(),
        Words.capitalized(cannot.what())
            + (cannot.lacksSetting() ? "." : "; expected " + cannot.expected() + "."),
        Words.capitalized(cannot.remedy()) + ".",
        involved(cannot.place()));
  }

  private static Involved involved(PlanPath place) {
    boolean isZone = place.steps().size() > 1 && place.steps().getFirst().equals("zones");
    return isZone ? Involved.zone(Integer.parseInt(place.steps().get(1))) : Involved.NOTHING;
  }

  private static void keypads(SitePlan plan, PanelDescription panel, Report report) {
    Integer most = panel.capacity().counts().get("keypads");
    if (most == null) {
      return;
    }
    report.judged();
    int planned = (int) plan.devicesOf(DeviceKind.KEYPAD).count();
    if (planned > most) {
      report.found(
          PlanPath.of("devices"),
          "The plan has "
              + Words.count(planned, "keypad")
              + ", and '"
              + panel.panel()
              + "' connects "
              + most
              + ".",
          "Leave some out, or choose a larger panel.",
          Involved.devices(plan.devicesOf(DeviceKind.KEYPAD).map(each -> each.name()).toList()));
    }
  }
}
