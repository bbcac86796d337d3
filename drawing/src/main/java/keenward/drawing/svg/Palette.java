package keenward.drawing.svg;

/** Where the colours of a drawing come from. */
public enum Palette {
  /**
   * From custom properties of the page, so that it follows the page's light or dark look; light
   * without any.
   */
  PAGE,
  /** Plain colours, for PDF and for files that stand alone. */
  PRINT;

  /** The value of a fill or stroke. */
  public String of(Ink ink) {
    return switch (this) {
      case PAGE -> "var(" + ink.property() + "," + ink.light() + ")";
      case PRINT -> ink.light();
    };
  }

  /**
   * Declarations of every custom property for a light page, to stand inside a rule such as {@code
   * :root}.
   */
  public static String lightDeclarations() {
    StringBuilder css = new StringBuilder();
    for (Ink ink : Ink.values()) {
      css.append(ink.property()).append(':').append(ink.light()).append(';');
    }
    return css.toString();
  }

  /** Declarations of every custom property for a dark page. */
  public static String darkDeclarations() {
    StringBuilder css = new StringBuilder();
    for (Ink ink : Ink.values()) {
      css.append(ink.property()).append(':').append(ink.dark()).append(';');
    }
    return css.toString();
  }
}
