package keenward.usecases.suggest;

import java.util.ArrayList;
import java.util.List;
import keenward.core.building.Texts;
import keenward.core.building.placing.Candidate;
import keenward.core.building.placing.DetectorPlacer;
import keenward.core.building.placing.KeypadPlacer;
import keenward.core.building.placing.Suggestion;
import keenward.core.building.placing.Wish;
import keenward.core.plan.DeviceType;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Floor;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.progress.Progress;
import keenward.core.quantities.Length;
import keenward.core.rules.CheckInput;
import keenward.drawing.floor.FloorOptions;
import keenward.usecases.drawn.FloorPicture;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.KnownNames;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/**
 * Where detectors and keypads of a site could go.
 *
 * @param site the plan and its file
 * @param detectors the detectors
 * @param keypads for each partition with entry doors the keypad place of least delay
 */
public record SiteSuggestion(
    SiteFile site, Suggestion detectors, KeypadPlacer.KeypadPlaces keypads) {

  /** The proposal for a site. */
  public static SiteSuggestion of(SiteFile site, CheckInput input, Wish wish, Progress progress)
      throws BadInput {
    SitePlan plan = site.plan();
    List<String> rooms =
        plan.floors().stream().flatMap(floor -> floor.rooms().stream()).map(Room::name).toList();
    for (String name : wish.rooms()) {
      KnownNames.check("--room", "room", name, rooms);
    }
    List<String> types = plan.types().stream().map(DeviceType::name).toList();
    for (String name : wish.types()) {
      KnownNames.check("--type", "device type", name, types);
    }
    return propose(site, input, wish, progress);
  }

  /** The proposal for a site; the wish names no rooms or types. */
  public static SiteSuggestion of(SiteFile site, Wish wish) {
    return propose(site, CheckInput.of(site.plan()), wish, Progress.SILENT);
  }

  private static SiteSuggestion propose(
      SiteFile site, CheckInput input, Wish wish, Progress progress) {
    SitePlan plan = site.plan();
    Suggestion detectors =
        DetectorPlacer.propose(plan, input.building(), wish, new ProgrammeChooser(), progress);
    KeypadPlacer.KeypadPlaces keypads =
        KeypadPlacer.propose(
            plan, input.walkingMap(), input.entryWays(), input.sightings(), progress);
    return new SiteSuggestion(site, detectors, keypads);
  }

  /** The lines that would bring the detectors into the plan. */
  public List<String> planLines() {
    List<String> lines = new ArrayList<>();
    detectors
        .placements()
        .forEach(placement ->
            lines.add(
                placement.device().name()
                    + ": { type: "
                    + placement.candidate().type().name()
                    + ", room: "
                    + placement.candidate().room()
                    + ", at: "
                    + place(placement.candidate())
                    + placement
                        .device()
                        .height()
                        .map(Length::written)
                        .find()
                        .map(height -> ", height: " + height)
                        .orElse("")
                    + placement
                        .candidate()
                        .bearingDegrees()
                        .map(degrees -> ", bearing: " + Math.round(degrees) + " deg")
                        .orElse("")
                    + " }"));
    return lines;
  }

  private String place(Candidate candidate) {
    return new Texts(
            site.plan()
                .findFloorOfRoom(candidate.room())
                .map(Floor::unit)
                .orElse(DrawingUnit.METRES))
        .place(candidate.at());
  }

  /**
   * A floor with the plan's detectors and those proposed.
   *
   * @param floor name of the floor; null for the only one that is drawn
   */
  public String svg(@Nullable String floor) throws BadInput {
    return FloorPicture.svg(
        detectors.plan(),
        detectors.building(),
        floor,
        FloorOptions.desk().coverage(detectors.coverage()));
  }
}
