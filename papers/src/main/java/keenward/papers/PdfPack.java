package keenward.papers;

import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.TextDirection;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Prints a pack as one PDF: fonts inside, bookmarks, page numbers. The same pack gives the same
 * bytes.
 */
public final class PdfPack {

  private static final String SCHEME = "shipped";
  private static final List<String> FONTS =
      List.of("DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf", "DejaVuSansMono.ttf");

  private PdfPack() {}

  /**
   * Writes the PDF.
   *
   * @throws TemplateProblem when a template of somebody's own is not well-formed
   */
  public static void write(Pack pack, PaperSize size, OutputStream out) throws IOException {
    // The renderer writes its own progress to the terminal otherwise.
    XRLog.setLoggingEnabled(false);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory());
    builder.useUnicodeBidiReorderer(new ICUBidiReorderer());
    builder.defaultTextDirection(TextDirection.LTR);
    builder.useProtocolsStreamImplementation(PdfPack::font, SCHEME);
    // Nothing but the fonts that ship is ever fetched, whatever a template asks for.
    builder.useUriResolver(
        (base, uri) -> uri.startsWith(SCHEME + ":") || uri.startsWith("#") ? uri : null);
    builder.withDiagnosticConsumer(diagnostic -> {});
    builder.withProducer("Keenward");
    builder.withW3cDocument(parse(LongTables.cut(pack.printed().on(size))), "");
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
      PDDocument document = renderer.getPdfDocument();
      fixDates(document, pack);
      document.save(out);
    }
  }

  /** Without this, time and chance of the moment would go into the file. */
  private static void fixDates(PDDocument document, Pack pack) {
    PDDocumentInformation information = document.getDocumentInformation();
    Calendar epoch = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
    epoch.setTimeInMillis(0);
    information.setCreationDate(epoch);
    information.setModificationDate(epoch);
    information.setTitle(pack.site());
    document.setDocumentId((long) pack.cover().hashCode());
  }

  private static Document parse(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      return builder.parse(new InputSource(new StringReader(html)));
    } catch (SAXParseException torn) {
      throw new TemplateProblem(
          "pack",
          torn.getLineNumber(),
          "the filled templates are not well-formed: "
              + torn.getMessage()
              + " Expected XHTML: every tag closed, attributes quoted. Near: "
              + near(html, torn.getLineNumber()));
    } catch (SAXException | ParserConfigurationException | IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String near(String html, int line) {
    return html.lines().skip(Math.max(0, line - 1)).findFirst().orElse("").strip();
  }

  private static FontStream font(String uri) {
    return new FontStream(uri.substring(SCHEME.length() + 1));
  }

  private record FontStream(String name) implements com.openhtmltopdf.extend.FSStream {
    @Override
    public InputStream getStream() {
      InputStream stream =
          FONTS.contains(name) ? PdfPack.class.getResourceAsStream("fonts/" + name) : null;
      return stream == null ? new ByteArrayInputStream(new byte[0]) : stream;
    }

    @Override
    public Reader getReader() {
      return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
    }
  }
}
