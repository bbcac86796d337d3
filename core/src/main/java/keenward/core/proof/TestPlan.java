package keenward.core.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Setting;
import keenward.core.plan.SitePlan;

/**
 * Everything that has to be tested on a site, in the order of a visit. It says what should be; what
 * was seen belongs to a test record.
 *
 * @param steps the steps, numbered from 1
 * @param notes what to know before starting
 * @param notAssessed what could not be told, each with the line to add
 */
public record TestPlan(List<TestStep> steps, List<String> notes, List<MissingFact> notAssessed) {

  /** Copies the lists. */
  public TestPlan {
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
    notAssessed = List.copyOf(notAssessed);
  }

  /** The test plan of a site whose panel description is not known. */
  public static TestPlan of(SitePlan plan) {
    return of(plan, Map.of());
  }

  /** The test plan of a site. */
  public static TestPlan of(SitePlan plan, Map<Setting, Long> panelDefaults) {
    TestContext context = new TestContext(plan, panelDefaults);
    ZoneSteps zones = new ZoneSteps(context);
    TimeSteps times = new TimeSteps(context);
    SupplySteps supplies = new SupplySteps(context);
    CentreSteps centre = new CentreSteps(context);
    Walk walk = Walk.of(plan);
    List<TestStep> steps = new ArrayList<>();
    steps.add(centre.before());
    steps.addAll(byPartitionWhereArmed(alongTheWalk(walk, zones.steps())));
    steps.addAll(times.steps());
    steps.addAll(centre.steps());
    steps.addAll(supplies.steps());
    steps.addAll(alongTheWalk(walk, new RadioSteps(context).steps()));
    steps.add(centre.after());
    List<MissingFact> missing = new ArrayList<>(centre.missing());
    missing.addAll(zones.missing());
    missing.addAll(times.missing());
    missing.addAll(supplies.missing());
    return new TestPlan(inOrder(steps), notes(context), missing);
  }

  /** Sorts by place; the sort is stable, so that in one room the order of the plan stays. */
  private static List<TestStep> alongTheWalk(Walk walk, List<TestStep> steps) {
    return steps.stream().sorted(Comparator.comparingInt(step -> walk.rank(step.place()))).toList();
  }

  /** One partition after the other, so that each is armed once. */
  private static List<TestStep> byPartitionWhereArmed(List<TestStep> steps) {
    return steps.stream()
        .sorted(Comparator.comparingInt(step -> step.phase() == Phase.ARMED ? step.partition() : 0))
        .toList();
  }

  private static List<TestStep> inOrder(List<TestStep> steps) {
    List<TestStep> numbered = new ArrayList<>();
    steps.stream()
        .sorted(Comparator.comparing(TestStep::phase))
        .forEach(step -> numbered.add(step.numbered(numbered.size() + 1)));
    return numbered;
  }

  private static List<String> notes(TestContext context) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Local code, the authority having jurisdiction, the makers' instructions and licensed practice come before this"
            + " list.");
    notes.add(
        "In an armed partition every step trips the motion detectors on the way: test openings first, and let each zone come"
            + " to rest before the next.");
    long limit = context.settings().get(Setting.SWINGER_LIMIT).value();
    if (limit > 0) {
      notes.add(
          "After "
              + limit
              + (limit == 1 ? " alarm" : " alarms")
              + " of a zone in one arming period nothing more is reported: disarm and arm again before repeating.");
    }
    return notes;
  }
}
