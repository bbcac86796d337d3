package keenward.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LetteringTest {

  @Test
  void wordsAreAsWideAsTheirLetters() {
    // DejaVu Sans: H 752, a 613, l 278, 1 636 thousandths; bold H 837.
    assertThat(Lettering.width("Hall1", 10, false))
        .isCloseTo(7.52 + 6.13 + 2 * 2.78 + 6.36, within(1e-9));
    assertThat(Lettering.width("H", 10, true)).isCloseTo(8.37, within(1e-9));
    assertThat(Lettering.width("漢", 10, false)).isEqualTo(10);
  }

  @Test
  void wrappedLinesFitAndLoseNoWord() {
    assertThat(Lettering.wrap("Entry delay 1 runs for 30 s", 10, false, 80))
        .containsExactly("Entry delay 1", "runs for 30 s")
        .allSatisfy(line -> assertThat(Lettering.width(line, 10, false)).isLessThanOrEqualTo(80));
    assertThat(Lettering.wrap("  one  ", 10, false, 80)).containsExactly("one");
    assertThat(Lettering.wrap("", 10, false, 80)).containsExactly("");
  }

  @Test
  void aNumberKeepsItsUnit() {
    assertThat(Lettering.wrap("wait 30 s", 10, false, Lettering.width("wait 30", 10, false)))
        .containsExactly("wait", "30 s");
  }

  @Test
  void whatIsTooWideIsCutShort() {
    String cut = Lettering.fit("Incomprehensibilities", 10, false, 60);
    assertThat(cut).startsWith("Incom").endsWith("…");
    assertThat(Lettering.width(cut, 10, false)).isLessThanOrEqualTo(60);
    assertThat(Lettering.fit("Short", 10, false, 60)).isEqualTo("Short");
  }
}
