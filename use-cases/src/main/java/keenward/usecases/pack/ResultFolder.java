package keenward.usecases.pack;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import keenward.core.progress.Progress;
import keenward.drawing.floor.FloorOptions;
import keenward.files.output.WholeFolder;
import keenward.files.table.TableWriter;
import keenward.papers.Pack;
import keenward.papers.Paper;
import keenward.papers.PdfPack;
import keenward.usecases.job.SiteJob;
import keenward.usecases.pictures.Pictures;

/** Writes everything of a job into one folder, as a whole. */
public final class ResultFolder {

  private ResultFolder() {}

  /**
   * Writes the folder {@code parent/NAME-OF-THE-SITE}: the pack as PDF, each paper as HTML, tables
   * as XLSX and CSV, the drawings as SVG, plain, with coverage, and with walks.
   *
   * @param more further files by name, such as results as JSON
   * @return the folder
   * @throws IOException when something cannot be written; a former folder stands then
   */
  public static Path write(
      SiteJob job, Path parent, Sheet sheet, Map<String, String> more, Progress progress)
      throws IOException {
    progress.check("writing the papers", 0, 0);
    Pack pack = PaperPack.compose(job);
    return WholeFolder.replace(
        parent, job.site().shortName(), folder -> fill(folder, job, pack, sheet, more, progress));
  }

  private static void fill(
      Path folder, SiteJob job, Pack pack, Sheet sheet, Map<String, String> more, Progress progress)
      throws IOException {
    Path papers = Files.createDirectory(folder.resolve("papers"));
    Files.writeString(papers.resolve("index.html"), pack.index());
    for (Paper paper : pack.papers()) {
      Files.writeString(papers.resolve(paper.name() + ".html"), paper.html());
    }
    progress.check("printing the pack", 0, 0);
    try (OutputStream stream =
        new BufferedOutputStream(Files.newOutputStream(folder.resolve("pack.pdf")))) {
      PdfPack.write(pack, sheet.size(), stream);
    }
    Map<String, List<List<String>>> tables = PackTables.of(job);
    Path sheets = Files.createDirectory(folder.resolve("tables"));
    for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
      Files.write(sheets.resolve(table.getKey() + ".csv"), TableWriter.csv(table.getValue()));
    }
    Files.write(folder.resolve("tables.xlsx"), PackTables.workbook(tables, job.version()));
    draw(folder, "floor", Pictures.floors(job, FloorOptions.paper()));
    draw(folder, "coverage", Pictures.floors(job, FloorOptions.paper().coverage(job.coverage())));
    draw(folder, "walks", Pictures.floors(job, FloorOptions.paper().walks(job.walks().walks())));
    for (Map.Entry<String, String> file : more.entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
  }

  private static void draw(Path folder, String name, Map<String, String> drawings)
      throws IOException {
    int number = 1;
    for (String svg : drawings.values()) {
      Files.writeString(folder.resolve(name + "-" + number + ".svg"), svg);
      number++;
    }
  }
}
