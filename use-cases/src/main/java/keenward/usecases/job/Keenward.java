package keenward.usecases.job;

import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.placing.Wish;
import keenward.core.progress.Progress;
import keenward.core.proof.TestPlan;
import keenward.core.rules.CheckInput;
import keenward.core.rules.CheckResult;
import keenward.core.rules.catalogue.Checks;
import keenward.usecases.order.KeyIn;
import keenward.usecases.order.KeyInMaker;
import keenward.usecases.panel.PanelFinder;
import keenward.usecases.panel.PanelInUse;
import keenward.usecases.radio.SiteRadio;
import keenward.usecases.rehearse.Rehearser;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.suggest.SiteSuggestion;
import keenward.usecases.walks.TimedWalks;
import org.jspecify.annotations.Nullable;

/**
 * What a person can ask for about a site, each stage on its own or all of them. Safe for use by
 * several threads.
 */
public final class Keenward {

  private final PanelFinder panels;
  private final String version;

  /**
   * The use cases.
   *
   * @param panels where panel descriptions are found
   * @param version version of this program, which proof hashes cover
   */
  public Keenward(PanelFinder panels, String version) {
    this.panels = panels;
    this.version = version;
  }

  /** The panel of a site. */
  public PanelInUse panel(SiteFile site, JobOptions options) throws BadInput {
    return panel(site, options.panel());
  }

  /**
   * The panel of a site.
   *
   * @param override name or path of a description that stands in for the plan's own; null for none
   */
  public PanelInUse panel(SiteFile site, @Nullable String override) throws BadInput {
    return panels.find(site, override);
  }

  /** Findings, and what could not be judged. */
  public CheckResult check(SiteFile site, JobOptions options) throws BadInput {
    return Checks.run(input(site, panel(site, options), options));
  }

  /** The order with its proof, or the entry sheet. */
  public KeyIn keyIn(SiteFile site, JobOptions options, Progress progress) throws BadInput {
    return keyIn(site, panel(site, options), options, progress);
  }

  /** The walks that delays depend on. */
  public TimedWalks walks(SiteFile site, JobOptions options) throws BadInput {
    return TimedWalks.of(site, input(site, panel(site, options), options));
  }

  /** A walk between two places by name: openings, devices or rooms. */
  public TimedWalks walk(SiteFile site, String from, String to, JobOptions options)
      throws BadInput {
    return TimedWalks.between(site, input(site, panel(site, options), options), from, to);
  }

  /** How radio devices are heard. */
  public SiteRadio radio(SiteFile site, JobOptions options) throws BadInput {
    CheckInput input = input(site, panel(site, options), options);
    return SiteRadio.of(site, input.building(), input.radio());
  }

  /** Where detectors and keypads could go. */
  public SiteSuggestion suggest(SiteFile site, Wish wish, JobOptions options, Progress progress)
      throws BadInput {
    return SiteSuggestion.of(site, input(site, panel(site, options), options), wish, progress);
  }

  /** Everything. */
  public SiteJob job(SiteFile site, JobOptions options, Progress progress) throws BadInput {
    PanelInUse panel = panel(site, options);
    progress.check("checking the plan", 0, 0);
    CheckInput input = input(site, panel, options);
    return new SiteJob(
        site,
        options.asOf(),
        panel,
        input.settings(),
        input.building(),
        CoverageMap.of(input.building(), input.views()),
        input.walks(),
        Checks.run(input),
        input.power(),
        input.radio(),
        input.outages(),
        Rehearser.standard(site, panel, input.building(), progress),
        keyIn(site, panel, options, progress),
        TestPlan.of(site.plan(), panel.defaults()),
        version);
  }

  private static CheckInput input(SiteFile site, PanelInUse panel, JobOptions options) {
    CheckInput input = CheckInput.of(site.plan()).asOf(options.asOf());
    return panel
        .findDescription()
        .map(description -> input.withPanel(description, panel.defaults()))
        .orElse(input);
  }

  private KeyIn keyIn(SiteFile site, PanelInUse panel, JobOptions options, Progress progress)
      throws BadInput {
    return KeyInMaker.make(
        site, panel, options.found(), options.keypad(), options.consents(), version, progress);
  }
}
