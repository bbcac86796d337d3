package keenward.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import keenward.papers.Pack;
import keenward.papers.Paper;
import keenward.papers.PaperSize;
import keenward.papers.PdfPack;
import keenward.usecases.job.PaperPack;
import keenward.usecases.job.SiteJob;

/** A paper to be looked at or fetched. */
final class PaperFile {

  private final String contentType;
  private final byte[] bytes;

  private PaperFile(String contentType, byte[] bytes) {
    this.contentType = contentType;
    this.bytes = bytes;
  }

  /** Sends it as the answer. */
  void answer(Context request) {
    request.contentType(contentType).result(bytes);
  }

  /** The papers of a job. */
  static List<Paper> list(SiteJob job) {
    return PaperPack.compose(job).papers();
  }

  /** The paper of that file name. */
  static Optional<PaperFile> find(SiteJob job, String name) throws IOException {
    Pack pack = PaperPack.compose(job);
    if (name.equals("pack-a4.pdf")) {
      return Optional.of(pdf(pack, PaperSize.A4));
    }
    if (name.equals("pack-letter.pdf")) {
      return Optional.of(pdf(pack, PaperSize.LETTER));
    }
    return pack.papers().stream()
        .filter(paper -> name.equals(paper.name() + ".html"))
        .findFirst()
        .map(paper ->
            new PaperFile(
                "text/html; charset=utf-8", paper.html().getBytes(StandardCharsets.UTF_8)));
  }

  private static PaperFile pdf(Pack pack, PaperSize size) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PdfPack.write(pack, size, bytes);
    return new PaperFile("application/pdf", bytes.toByteArray());
  }
}
