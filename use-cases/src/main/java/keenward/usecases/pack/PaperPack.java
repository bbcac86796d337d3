package keenward.usecases.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.sheet.EntrySheet;
import keenward.papers.Entering;
import keenward.papers.Obstacle;
import keenward.papers.Pack;
import keenward.papers.Paper;
import keenward.papers.Papers;
import keenward.papers.PapersInput;
import keenward.papers.PdfPack;
import keenward.papers.Rehearsed;
import keenward.papers.TemplateSource;
import keenward.usecases.job.SiteJob;
import keenward.usecases.order.KeyIn;
import keenward.usecases.pictures.Pictures;
import keenward.usecases.rehearse.RehearsedScenario;

/** The papers of a job, by the templates that ship. */
public final class PaperPack {

  private PaperPack() {}

  /**
   * A paper in a list.
   *
   * @param name name of its file, without ending
   * @param title its title
   */
  public record Entry(String name, String title) {}

  /** What papers there are, in the order of the pack. */
  public static List<Entry> list(SiteJob job) {
    return compose(job).papers().stream()
        .map(paper -> new Entry(paper.name(), paper.title()))
        .toList();
  }

  /** The paper of that name as a file of its own. */
  public static Optional<String> html(SiteJob job, String name) {
    return compose(job).papers().stream()
        .filter(paper -> paper.name().equals(name))
        .findFirst()
        .map(Paper::html);
  }

  /**
   * The whole pack as a PDF.
   *
   * @throws IOException when the renderer fails
   */
  public static byte[] pdf(SiteJob job, Sheet sheet) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PdfPack.write(compose(job), sheet.size(), bytes);
    return bytes.toByteArray();
  }

  static Pack compose(SiteJob job) {
    return Papers.compose(
        new PapersInput(
            job.site().plan(),
            job.building(),
            job.coverage(),
            job.walks(),
            job.settings(),
            job.check(),
            job.power(),
            job.outages(),
            Pictures.dischargesForPaper(job),
            job.testPlan(),
            entering(job),
            job.rehearsal().scenarios().stream().map(PaperPack::rehearsed).toList(),
            job.site()::place,
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
