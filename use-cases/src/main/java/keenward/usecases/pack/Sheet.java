package keenward.usecases.pack;

import keenward.papers.PaperSize;

/** The sheet that a pack is printed on. */
public enum Sheet {
  /** ISO 216 A4. */
  A4(PaperSize.A4),
  /** US Letter. */
  LETTER(PaperSize.LETTER);

  private final PaperSize size;

  Sheet(PaperSize size) {
    this.size = size;
  }

  PaperSize size() {
    return size;
  }
}
