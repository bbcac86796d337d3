package keenward.web;

import java.util.List;
import java.util.Map;
import keenward.drawing.floor.FloorOptions;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.timeline.TimelineOptions;
import keenward.usecases.job.SiteJob;
import keenward.usecases.pictures.Pictures;
import keenward.usecases.rehearse.RehearsedScenario;

/**
 * What a page of a site shows.
 *
 * @param name short name of the site in addresses
 * @param job everything computed
 * @param stage which page
 */
public record StagePage(String name, SiteJob job, Stage stage) {

  /** Drawings of the floors by name. */
  public Map<String, String> floors() {
    return Pictures.floors(job, FloorOptions.desk());
  }

  /** Drawings of the floors with the findings as flags. */
  public Map<String, String> flaggedFloors() {
    return Pictures.floors(job, FloorOptions.desk().marks(Pictures.flags(job)));
  }

  /** Bars of loads and batteries. */
  public String loads() {
    return Pictures.loads(job.power(), LoadOptions.desk());
  }

  /** The picture of a scenario. */
  public String timeline(RehearsedScenario scenario) {
    return Pictures.timeline(scenario.result().timeline(), TimelineOptions.desk(scenario.name()));
  }

  /** The pages to choose from. */
  public List<Stage> stages() {
    return List.of(Stage.values());
  }
}
