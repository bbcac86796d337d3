package keenward.drawing.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room words take up. Advance widths are those of DejaVu Sans, which is wider than the
 * usual sans-serif faces, so that a label set in another face is narrower than planned, not wider.
 */
public final class Lettering {

  /** The faces asked for, where the page does not set its own. */
  public static final String FACES = "system-ui, 'Liberation Sans', 'DejaVu Sans', sans-serif";

  private static final int FIRST = 32;
  private static final int OTHER = 800;
  private static final int WIDE = 1000;

  private static final int[] REGULAR = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
  };

  private static final int[] BOLD = {
    348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696,
    696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683,
    683, 821, 837, 372, 372, 775, 637, 995, 837, 850, 733, 850, 770, 720, 682, 812, 774, 1103, 771,
    724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716, 678, 435, 716, 712, 343, 343, 665,
    343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712, 365, 712, 838
  };

  private Lettering() {}

  /** The width of a text in pixels at a size. */
  public static double width(String text, double size, boolean bold) {
    int[] widths = bold ? BOLD : REGULAR;
    long thousandths =
        text.codePoints()
            .mapToLong(point -> {
              int index = point - FIRST;
              if (index >= 0 && index < widths.length) {
                return widths[index];
              }
              return point > 0x2E80 ? WIDE : OTHER;
            })
            .sum();
    return thousandths * size / 1000;
  }

  /** The text, cut short with an ellipsis where it is wider than there is room. */
  public static String fit(String text, double size, boolean bold, double room) {
    if (width(text, size, bold) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end).stripTrailing() + "…", size, bold) > room) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  /** The words of a text; a number keeps its unit, so that "30 s" stays together. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    for (String word : text.strip().split("\\s+", -1)) {
      boolean isUnit = word.length() <= 3 && !words.isEmpty() && endsInDigit(words.getLast());
      if (isUnit) {
        words.add(words.removeLast() + " " + word);
      } else {
        words.add(word);
      }
    }
    return words;
  }

  private static boolean endsInDigit(String word) {
    return !word.isEmpty() && Character.isDigit(word.charAt(word.length() - 1));
  }

  /** The text in lines no wider than there is room; a word that is wider by itself is cut short. */
  public static List<String> wrap(String text, double size, boolean bold, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(text)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || width(longer, size, bold) <= room) {
        line.setLength(0);
        line.append(longer);
      } else {
        lines.add(fit(line.toString(), size, bold, room));
        line.setLength(0);
        line.append(word);
      }
    }
    lines.add(fit(line.toString(), size, bold, room));
    return lines;
  }
}
