package keenward.usecases.coverage;

import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.usecases.site.SiteFile;

/**
 * What the detectors of a site see, and where nobody looks.
 *
 * @param site the plan and its file
 * @param building the building made of it
 * @param map what is seen
 */
public record SiteCoverage(SiteFile site, Building building, CoverageMap map) {

  /** The coverage of a site. */
  public static SiteCoverage of(SiteFile site) {
    Building building = Building.of(site.plan());
    return new SiteCoverage(site, building, CoverageMap.of(site.plan(), building));
  }
}
