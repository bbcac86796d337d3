package keenward.usecases.coverage;

import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.drawing.floor.FloorOptions;
import keenward.usecases.drawn.FloorPicture;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

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

  /**
   * A floor with it.
   *
   * @param floor name of the floor; null for the only one that is drawn
   */
  public String svg(@Nullable String floor) throws BadInput {
    return FloorPicture.svg(site.plan(), building, floor, FloorOptions.desk().coverage(map));
  }
}
