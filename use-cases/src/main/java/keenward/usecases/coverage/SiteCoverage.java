package keenward.usecases.coverage;

import java.util.LinkedHashMap;
import java.util.Map;
import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.drawing.floor.FloorDrawing;
import keenward.drawing.floor.FloorOptions;
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
    return of(site, Building.of(site.plan()));
  }

  /** The coverage of a site whose building is made already. */
  public static SiteCoverage of(SiteFile site, Building building) {
    return new SiteCoverage(site, building, CoverageMap.of(site.plan(), building));
  }

  /** One drawing a floor, by the floor's name; empty when the plan has no drawing. */
  public Map<String, String> drawings(FloorOptions options) {
    Map<String, String> drawings = new LinkedHashMap<>();
    for (String floor : FloorDrawing.floors(building)) {
      FloorDrawing.svg(site.plan(), building, floor, options.coverage(map))
          .ifPresent(svg -> drawings.put(floor, svg));
    }
    return drawings;
  }
}
