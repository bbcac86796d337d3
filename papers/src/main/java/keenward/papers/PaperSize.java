package keenward.papers;

/** Sheets that the pack is printed on. Both leave the same 180 mm of width between margins. */
public enum PaperSize {
  /** ISO 216 A4, 210 mm by 297 mm. */
  A4("210mm 297mm", "297mm 210mm", "15mm", "267mm"),
  /** US Letter, 8.5 in by 11 in. */
  LETTER("216mm 279mm", "279mm 216mm", "18mm", "249mm");

  private final String upright;
  private final String lying;
  private final String side;
  private final String lyingWidth;

  PaperSize(String upright, String lying, String side, String lyingWidth) {
    this.upright = upright;
    this.lying = lying;
    this.side = side;
    this.lyingWidth = lyingWidth;
  }

  /** Page rules for the style sheet. */
  String pageRules() {
    return "@page{size:"
        + upright
        + ";margin-left:"
        + side
        + ";margin-right:"
        + side
        + "}\n@page lying{size:"
        + lying
        // A block keeps the width of the upright page unless it is told the one between the
        // margins.
        + "}\n.sheet.wide{width:"
        + lyingWidth
        + "}\n";
  }
}
