package keenward.usecases.coverage;

import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.usecases.site.SiteFile;

/**
 * What the detectors of a site see, and where nobody looks.
 *
 * @param site the plan and its file
 * @param map what is seen
 */
public record SiteCoverage(SiteFile site, CoverageMap map) {

  /** The coverage of a site. */
  public static SiteCoverage of(SiteFile site) {
    return new SiteCoverage(site, CoverageMap.of(site.plan(), Building.of(site.plan())));
  }
}
