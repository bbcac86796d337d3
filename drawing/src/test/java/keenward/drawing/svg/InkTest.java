package keenward.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class InkTest {

  private static final List<Ink> WRITTEN =
      List.of(
          Ink.TEXT,
          Ink.QUIET,
          Ink.INTRUSION,
          Ink.PERSON,
          Ink.FIRE,
          Ink.GAS,
          Ink.PLANT,
          Ink.GEAR,
          Ink.ERROR,
          Ink.WARNING,
          Ink.NOTE);

  private static final List<Ink> GROUNDS =
      List.of(
          Ink.PAPER,
          Ink.TRADE,
          Ink.WORK,
          Ink.STORE,
          Ink.COLD,
          Ink.WAY,
          Ink.LIVING,
          Ink.SLEEPING,
          Ink.WET,
          Ink.PLANT_ROOM,
          Ink.ANY_USE,
          Ink.FURNITURE);

  /**
   * WCAG 2.1, success criterion 1.4.3: contrast of at least 4.5:1 for text (formula from memory).
   */
  @Test
  void wordsAndSymbolsCanBeReadOnEveryGroundLightAndDark() {
    for (Ink ground : GROUNDS) {
      for (Ink ink : WRITTEN) {
        assertThat(contrast(ink.light(), ground.light()))
            .as(ink + " on " + ground)
            .isGreaterThan(4.5);
        assertThat(contrast(ink.dark(), ground.dark()))
            .as(ink + " on dark " + ground)
            .isGreaterThan(4.5);
      }
    }
    assertThat(contrast(Ink.TEXT.light(), Ink.HIGHLIGHT.light())).isGreaterThan(4.5);
    assertThat(contrast(Ink.TEXT.dark(), Ink.HIGHLIGHT.dark())).isGreaterThan(3);
  }

  /** The published extremes: black on white is 21:1, equal colours 1:1. */
  @Test
  void theFormulaGivesThePublishedExtremes() {
    assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
    assertThat(contrast("#777777", "#777777")).isEqualTo(1);
  }

  @Test
  void aPageSetsColoursAndPaperHasThemPlain() {
    assertThat(Palette.PAGE.of(Ink.INNER_WALL)).isEqualTo("var(--drawing-inner-wall,#5b6875)");
    assertThat(Palette.PRINT.of(Ink.INNER_WALL)).isEqualTo("#5b6875");
    assertThat(Palette.lightDeclarations()).contains("--drawing-paper:#ffffff;");
    assertThat(Palette.darkDeclarations()).contains("--drawing-paper:#12171d;");
  }

  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
  }

  private static double channel(String colour, int start) {
    double value = Integer.parseInt(colour.substring(start, start + 2), 16) / 255.0;
    return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
