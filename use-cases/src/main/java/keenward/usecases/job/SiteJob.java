package keenward.usecases.job;

import java.time.LocalDate;
import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.walking.SiteWalks;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.outage.Outages;
import keenward.core.plan.Settings;
import keenward.core.proof.TestPlan;
import keenward.core.radio.RadioAssessment;
import keenward.core.rules.CheckResult;
import keenward.usecases.order.KeyIn;
import keenward.usecases.panel.PanelInUse;
import keenward.usecases.rehearse.SiteRehearsal;
import keenward.usecases.site.SiteFile;

/**
 * Everything that is computed from one plan.
 *
 * @param site the plan and its file
 * @param asOf the day on which ages were judged
 * @param panel the panel as far as it is described
 * @param settings settings in force
 * @param building walls, openings, rooms
 * @param coverage what the motion detectors see
 * @param walks the walks that delays depend on
 * @param check findings
 * @param power sums of supplies, batteries and cables
 * @param radio how radio devices are heard
 * @param outages a long mains failure for every supply
 * @param rehearsal scenarios worth seeing
 * @param keyIn order with proof, or entry sheet
 * @param testPlan what to test
 * @param version version of the program that computed it
 */
public record SiteJob(
    SiteFile site,
    LocalDate asOf,
    PanelInUse panel,
    Settings settings,
    Building building,
    CoverageMap coverage,
    SiteWalks walks,
    CheckResult check,
    PowerAssessment power,
    RadioAssessment radio,
    Outages outages,
    SiteRehearsal rehearsal,
    KeyIn keyIn,
    TestPlan testPlan,
    String version) {}
