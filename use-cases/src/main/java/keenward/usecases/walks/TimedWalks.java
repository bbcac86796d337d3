package keenward.usecases.walks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.walking.Place;
import keenward.core.building.walking.SiteWalks;
import keenward.core.building.walking.WalkingMap;
import keenward.core.plan.Opening;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.rules.CheckInput;
import keenward.drawing.floor.FloorOptions;
import keenward.usecases.drawn.FloorPicture;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.KnownNames;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/**
 * Walks of a site and how long they take.
 *
 * @param site the plan and its file
 * @param building the building made of it
 * @param walks the walks
 */
public record TimedWalks(SiteFile site, Building building, SiteWalks walks) {

  /** The walks that delays depend on. */
  public static TimedWalks of(SiteFile site, CheckInput input) {
    return new TimedWalks(site, input.building(), input.walks());
  }

  /** A walk between two places by name: openings, devices or rooms. */
  public static TimedWalks between(SiteFile site, CheckInput input, String from, String to)
      throws BadInput {
    WalkingMap map = input.walkingMap();
    return new TimedWalks(
        site,
        input.building(),
        SiteWalks.between(
            map,
            input.sightings(),
            place(site.plan(), map, "--from", from),
            place(site.plan(), map, "--to", to)));
  }

  /**
   * A floor with it.
   *
   * @param floor name of the floor; null for the only one that is drawn
   */
  public String svg(@Nullable String floor) throws BadInput {
    return FloorPicture.svg(site.plan(), building, floor, FloorOptions.desk().walks(walks.walks()));
  }

  private static Place place(SitePlan plan, WalkingMap map, String option, String name)
      throws BadInput {
    List<String> known = new ArrayList<>();
    plan.openings().map(Opening::name).forEach(known::add);
    plan.devices().forEach(device -> known.add(device.name()));
    plan.floors().forEach(floor -> floor.rooms().stream().map(Room::name).forEach(known::add));
    KnownNames.check(option, "opening, device or room", name, known);
    Optional<Place> place =
        plan.openings()
            .filter(opening -> opening.name().equals(name))
            .findFirst()
            .flatMap(map::place)
            .or(() -> plan.findDevice(name).flatMap(map::place))
            .or(() -> map.place(name));
    if (place.isEmpty()) {
      throw new BadInput(
          option,
          "'" + name + "' has no place in the drawing",
          "a place that is drawn",
          "give it `at:`, or its room an `outline:`");
    }
    return place.get();
  }
}
