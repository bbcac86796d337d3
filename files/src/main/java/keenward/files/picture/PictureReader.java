package keenward.files.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import keenward.files.Problem;
import net.coobird.thumbnailator.Thumbnails;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Reads a scan, a photo or a page of a PDF. The picture is turned upright, made no larger than a
 * page needs, and written anew, so that nothing but its pixels goes on.
 */
public final class PictureReader {

  /** A0 at 150 dots an inch is 35 million. */
  private static final long MOST_PIXELS = 40_000_000;

  private static final int LONGEST_SIDE_PIXELS = 3000;
  private static final double POINTS_AN_INCH = 72;
  private static final double USUAL_DOTS_AN_INCH = 200;
  private static final double JPEG_QUALITY = 0.85;

  private PictureReader() {}

  /**
   * Reads a picture.
   *
   * @param file its name as the person gave it; its ending tells a PDF
   * @param bytes the whole file
   * @param page page of a PDF, from 1
   */
  public static PictureReading read(String file, byte[] bytes, int page) {
    try {
      return file.toLowerCase(Locale.ROOT).endsWith(".pdf")
          ? pdf(file, bytes, page)
          : raster(file, bytes);
    } catch (InvalidPasswordException locked) {
      return refused(file, "the PDF is locked", "a PDF that opens without a password", "");
    } catch (IOException | RuntimeException broken) {
      // The libraries throw all sorts at a broken file; there is nothing in them for its reader.
      return refused(
          file,
          "the file cannot be read as a picture",
          "a sound PNG, JPEG (RGB or grey) or PDF",
          "open it in a picture program and save it as PNG");
    }
  }

  private static PictureReading raster(String file, byte[] bytes) throws IOException {
    String format;
    try (ImageInputStream stream =
        ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        return refused(file, "this is no picture", "a PNG or JPEG file", "");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream);
        format = reader.getFormatName().toLowerCase(Locale.ROOT);
        // Before it is unpacked: a small file can hold a picture that fills the memory.
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > MOST_PIXELS) {
          return refused(
              file,
              "the picture has " + pixels / 1_000_000 + " million pixels",
              "at most " + MOST_PIXELS / 1_000_000 + " million",
              "save it smaller");
        }
      } finally {
        reader.dispose();
      }
    }
    boolean isPhoto = format.startsWith("jp");
    // Of these types every picture program and page shows all shades.
    BufferedImage upright =
        Thumbnails.of(new ByteArrayInputStream(bytes))
            .scale(1)
            .imageType(isPhoto ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB)
            .asBufferedImage();
    return new PictureReading.Read(
        new Picture(
            dataUri(smaller(upright), isPhoto ? "jpeg" : "png"),
            upright.getWidth(),
            upright.getHeight()));
  }

  private static PictureReading pdf(String file, byte[] bytes, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(bytes)) {
      int pages = document.getNumberOfPages();
      if (page > pages) {
        return refused(
            file,
            "the PDF has no page " + page,
            pages == 1 ? "page 1, its only one" : "a page from 1 to " + pages,
            "mend `page:`");
      }
      PDRectangle box = document.getPage(page - 1).getCropBox();
      boolean onItsSide = document.getPage(page - 1).getRotation() % 180 != 0;
      double width = onItsSide ? box.getHeight() : box.getWidth();
      double height = onItsSide ? box.getWidth() : box.getHeight();
      if (!(width >= 1 && height >= 1)) {
        return refused(file, "page " + page + " has no size", "a page with something on it", "");
      }
      double dots =
          Math.min(
              USUAL_DOTS_AN_INCH, LONGEST_SIDE_PIXELS * POINTS_AN_INCH / Math.max(width, height));
      BufferedImage image =
          new PDFRenderer(document).renderImageWithDPI(page - 1, (float) dots, ImageType.RGB);
      return new PictureReading.Read(new Picture(dataUri(image, "png"), width, height));
    }
  }

  private static BufferedImage smaller(BufferedImage image) throws IOException {
    return Math.max(image.getWidth(), image.getHeight()) <= LONGEST_SIDE_PIXELS
        ? image
        : Thumbnails.of(image).size(LONGEST_SIDE_PIXELS, LONGEST_SIDE_PIXELS).asBufferedImage();
  }

  private static String dataUri(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Thumbnails.of(image)
        .scale(1)
        .outputFormat(format)
        .outputQuality(JPEG_QUALITY)
        .toOutputStream(bytes);
    return "data:image/"
        + format
        + ";base64,"
        + Base64.getEncoder().encodeToString(bytes.toByteArray());
  }

  private static PictureReading refused(String file, String what, String expected, String remedy) {
    return new PictureReading.Refused(new Problem(file, 1, 1, what, expected, remedy));
  }
}
