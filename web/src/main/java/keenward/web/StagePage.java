package keenward.web;

import java.util.List;
import java.util.Map;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.core.electrical.outage.OwnCells;
import keenward.usecases.job.SiteJob;
import keenward.usecases.pictures.Pictures;
import keenward.usecases.radio.SiteRadio;
import keenward.usecases.rehearse.RehearsedScenario;
import keenward.usecases.trace.TracedFloor;

/**
 * What a page of a site shows.
 *
 * @param name short name of the site in addresses
 * @param job everything computed
 * @param stage which page
 */
public record StagePage(String name, SiteJob job, Stage stage) {

  /** Drawings of the floors by name. */
  public List<Pictures.Both> floors() {
    return Pictures.forPage(job);
  }

  /** Floors with a picture to trace, in their order; their pages are numbered from 1. */
  public List<String> tracedFloors() {
    return TracedFloor.floors(job.site().plan());
  }

  /** Drawings of the floors that a motion detector sees any of, with what it sees. */
  public List<Pictures.Both> coverage() {
    return Pictures.coverage(job);
  }

  /** Drawings of the floors on which somebody walks, with the walks that delays depend on. */
  public List<Pictures.Both> walks() {
    return Pictures.walks(job);
  }

  /** Drawings of the floors with the findings as flags. */
  public List<Pictures.Both> flaggedFloors() {
    return Pictures.withFlags(job);
  }

  /** What the panel reads of every loop. */
  public LoopAssessment loops() {
    return LoopAssessment.of(job.site().plan());
  }

  /** How radio devices are heard. */
  public SiteRadio radio() {
    return SiteRadio.of(job.site(), job.building(), job.radio());
  }

  /** Drawings of the floors with the margins of radio over them. */
  public List<Pictures.Both> radioMaps(SiteRadio radio) {
    return Pictures.radio(job, radio.maps());
  }

  /** Bars of loads and batteries. */
  public String loads() {
    return Pictures.loadsForPage(job);
  }

  /** Voltages along the cables of each supply. */
  public List<Pictures.Both> voltages() {
    return Pictures.voltagesForPage(job);
  }

  /** How the battery of each supply is emptied, by its name. */
  public Map<String, Pictures.Both> discharges() {
    return Pictures.dischargesForPage(job);
  }

  /** When the cells of devices are due. */
  public OwnCells cells() {
    return OwnCells.of(job.site().plan());
  }

  /** The picture of a scenario. */
  public Pictures.Both timeline(RehearsedScenario scenario) {
    return Pictures.timelineForPage(scenario);
  }

  /** The pages to choose from. */
  public List<Stage> stages() {
    return List.of(Stage.values());
  }
}
