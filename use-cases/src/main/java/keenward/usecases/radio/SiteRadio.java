package keenward.usecases.radio;

import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.radio.RadioAssessment;
import keenward.core.radio.RadioMap;
import keenward.drawing.floor.FloorOptions;
import keenward.usecases.drawn.FloorPicture;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/**
 * How the radio devices of a site are heard.
 *
 * @param site the plan and its file
 * @param building the building made of it
 * @param assessment links, routes and supervision
 * @param bestReceiver where one receiver would hear all senders best
 * @param bestRepeater where a repeater would help most; empty when none is needed
 */
public record SiteRadio(
    SiteFile site,
    Building building,
    RadioAssessment assessment,
    Optional<RadioMap.BestPlace> bestReceiver,
    Optional<RadioMap.BestPlace> bestRepeater) {

  /** The radio of a site. */
  public static SiteRadio of(SiteFile site, Building building, RadioAssessment assessment) {
    return new SiteRadio(
        site,
        building,
        assessment,
        RadioMap.bestReceiver(assessment),
        RadioMap.bestRepeater(assessment));
  }

  /** Margins over the drawn floors; none without a sender and a receiver that are known. */
  public List<RadioMap> maps() {
    return RadioMap.of(assessment);
  }

  /**
   * A floor with the margins over it.
   *
   * @param floor name of the floor; null for the only one that is drawn
   */
  public String svg(@Nullable String floor) throws BadInput {
    return FloorPicture.svg(site.plan(), building, floor, FloorOptions.desk().radio(maps()));
  }
}
