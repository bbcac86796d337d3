package keenward.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import keenward.usecases.job.SiteJob;
import keenward.usecases.pack.PackTables;
import keenward.usecases.pack.PaperPack;
import keenward.usecases.pack.Sheet;

/** A paper to be looked at or fetched. */
final class PaperFile {

  private static final String HTML = ".html";

  private final String contentType;
  private final byte[] bytes;

  private PaperFile(String contentType, byte[] bytes) {
    this.contentType = contentType;
    this.bytes = bytes;
  }

  /** The paper of that file name. */
  static Optional<PaperFile> find(SiteJob job, String name) throws IOException {
    return switch (name) {
      case "pack-a4.pdf" -> Optional.of(pdf(job, Sheet.A4));
      case "pack-letter.pdf" -> Optional.of(pdf(job, Sheet.LETTER));
      case "tables.xlsx" ->
          Optional.of(
              new PaperFile(
                  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                  PackTables.workbook(job)));
      default ->
          name.endsWith(HTML)
              ? PaperPack.html(job, name.substring(0, name.length() - HTML.length()))
                  .map(html ->
                      new PaperFile(
                          "text/html; charset=utf-8", html.getBytes(StandardCharsets.UTF_8)))
              : Optional.empty();
    };
  }

  /** Sends it as the answer. */
  void answer(Context request) {
    request.contentType(contentType).result(bytes);
  }

  private static PaperFile pdf(SiteJob job, Sheet sheet) throws IOException {
    return new PaperFile("application/pdf", PaperPack.pdf(job, sheet));
  }
}
