package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import keenward.core.building.Building;
import keenward.core.plan.SitePlan;

/** The scenarios that a plan suggests when nobody has written one. */
public final class StandardScenarios {

  private StandardScenarios() {}

  /**
   * What a plan suggests.
   *
   * @param scenarios the scenarios
   * @param notRehearsed what a large plan would suggest too, and is left out
   */
  public record Suggested(List<StandardScenario> scenarios, List<Assumption> notRehearsed) {
    public Suggested {
      scenarios = List.copyOf(scenarios);
      notRehearsed = List.copyOf(notRehearsed);
    }
  }

  /**
   * The scenarios that a plan suggests, always in the same order: usual days first, then what
   * honest people do wrong, what intruders do, calls for help, and the system itself.
   *
   * @param system the system of the plan
   * @param building the building of the plan
   */
  public static Suggested of(SitePlan plan, PlannedSystem system, Building building) {
    Scene scene = new Scene(system.model());
    List<StandardScenario> all = new ArrayList<>();
    all.addAll(new UsualDay(plan, scene, new Walk(plan, building)).scenarios());
    all.addAll(new HonestScenarios(scene).scenarios());
    all.addAll(new IntruderScenarios(scene).scenarios());
    all.addAll(new HelpScenarios(scene).scenarios());
    all.addAll(new SystemScenarios(scene).scenarios());
    return new Suggested(named(all), scene.notRehearsed());
  }

  /** Zones of the same name would give scenarios of the same name. */
  private static List<StandardScenario> named(List<StandardScenario> all) {
    Set<String> names = new HashSet<>();
    List<StandardScenario> distinct = new ArrayList<>();
    for (StandardScenario each : all) {
      String name = each.name();
      for (int number = 2; !names.add(name); number++) {
        name = each.name() + " (" + number + ")";
      }
      distinct.add(new StandardScenario(name, each.reason(), each.script()));
    }
    return List.copyOf(distinct);
  }
}
