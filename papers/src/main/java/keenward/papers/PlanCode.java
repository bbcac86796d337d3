package keenward.papers;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * The code (ISO/IEC 18004, QR) on each paper by which a telephone tells which plan it belongs to.
 * It holds what is printed beside it anyway: no name, no address, no link.
 */
final class PlanCode {

  private static final int QUIET_MODULES = 2;
  private static final int PIXELS = 76;

  private PlanCode() {}

  /** What the code of a paper says: format, paper, plan, day. */
  static String text(String paper, PapersInput input) {
    return "KEENWARD 1 " + paper + " PLAN " + input.planHash() + " ON " + input.date();
  }

  /** The code as a drawing. */
  static String svg(String text) {
    BitMatrix modules = modules(text);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      int x = 0;
      while (x < modules.getWidth()) {
        int from = x;
        while (x < modules.getWidth() && modules.get(x, y)) {
          x++;
        }
        if (x > from) {
          path.append('M')
              .append(from)
              .append(' ')
              .append(y)
              .append('h')
              .append(x - from)
              .append("v1h-")
              .append(x - from)
              .append('z');
        }
        x++;
      }
    }
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plan-code\" role=\"img\" aria-label=\"code of this paper\" viewBox=\"0 0 "
        + modules.getWidth()
        + " "
        + modules.getHeight()
        + "\" width=\""
        + PIXELS
        + "\" height=\""
        + PIXELS
        + "\"><path d=\""
        + path
        + "\" fill=\"#000000\" shape-rendering=\"crispEdges\"/></svg>";
  }

  private static BitMatrix modules(String text) {
    try {
      return new QRCodeWriter()
          .encode(
              text,
              BarcodeFormat.QR_CODE,
              0,
              0,
              Map.of(
                  EncodeHintType.MARGIN,
                  QUIET_MODULES,
                  EncodeHintType.ERROR_CORRECTION,
                  ErrorCorrectionLevel.M));
    } catch (WriterException impossible) {
      throw new IllegalStateException("a short text fits", impossible);
    }
  }
}
