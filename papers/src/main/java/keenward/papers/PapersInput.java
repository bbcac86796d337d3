package keenward.papers;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.walking.SiteWalks;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.outage.Outages;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.proof.TestPlan;
import keenward.core.rules.CheckResult;

/**
 * Everything that the papers print.
 *
 * @param plan the plan
 * @param building the building made of it
 * @param coverage what its motion detectors see
 * @param walks the walks that delays depend on
 * @param settings settings in force
 * @param check findings
 * @param power sums of supplies, batteries and cables
 * @param outages a long mains failure for every supply
 * @param discharges drawings of them, by the name of the supply
 * @param testPlan what to test
 * @param entering work order or entry sheet
 * @param rehearsals scenarios; the first is drawn, all are listed
 * @param places where a place of the plan stands in its file, such as {@code bakery.site.yaml:31:5}
 * @param planHash hash of the plan file in hexadecimal digits; footers show the first twelve
 * @param date date on the papers
 * @param version version of this program
 */
public record PapersInput(
    SitePlan plan,
    Building building,
    CoverageMap coverage,
    SiteWalks walks,
    Settings settings,
    CheckResult check,
    PowerAssessment power,
    Outages outages,
    Map<String, String> discharges,
    TestPlan testPlan,
    Entering entering,
    List<Rehearsed> rehearsals,
    Function<PlanPath, String> places,
    String planHash,
    LocalDate date,
    String version) {

  private static final int SHORT_HASH = 12;

  public PapersInput {
    discharges = Map.copyOf(discharges);
    rehearsals = List.copyOf(rehearsals);
  }

  /** The first digits of the plan's hash. */
  public String shortHash() {
    return planHash.substring(0, Math.min(SHORT_HASH, planHash.length()));
  }
}
