package keenward.usecases.job;

import java.util.List;
import keenward.core.dialogue.sheet.EntrySheet;
import keenward.papers.Entering;
import keenward.papers.Obstacle;
import keenward.papers.Pack;
import keenward.papers.Papers;
import keenward.papers.PapersInput;
import keenward.papers.Rehearsed;
import keenward.papers.TemplateSource;
import keenward.usecases.order.KeyIn;
import keenward.usecases.pictures.Pictures;
import keenward.usecases.rehearse.RehearsedScenario;

/** Composes the papers of a job. */
public final class PaperPack {

  private PaperPack() {}

  /** The papers, by the templates that ship. */
  public static Pack compose(SiteJob job) {
    return Papers.compose(
        new PapersInput(
            job.site().plan(),
            job.building(),
            job.settings(),
            job.check(),
            job.power(),
            job.testPlan(),
            entering(job),
            job.rehearsal().scenarios().stream().map(PaperPack::rehearsed).toList(),
            place -> job.site().positions().of(place).toString(),
            job.site().sha256(),
            job.asOf(),
            job.version()),
        TemplateSource.shipped());
  }

  private static Entering entering(SiteJob job) {
    return switch (job.keyIn()) {
      case KeyIn.Ordered ordered ->
          new Entering.ByOrder(ordered.order(), ordered.proof(), ordered.hash(), ordered.found());
      case KeyIn.Refused refused ->
          new Entering.ByHand(
              EntrySheet.of(job.site().plan()),
              refused.reasons().stream()
                  .map(reason -> new Obstacle(reason.what(), reason.remedy()))
                  .toList());
      case KeyIn.ByHand byHand ->
          new Entering.ByHand(byHand.sheet(), List.of(new Obstacle(byHand.why(), byHand.remedy())));
    };
  }

  private static Rehearsed rehearsed(RehearsedScenario scenario) {
    return new Rehearsed(
        scenario.name(),
        scenario.reason(),
        Pictures.rows(scenario.result().timeline()),
        scenario.result().unmet().stream().map(unmet -> unmet.text()).toList());
  }
}
