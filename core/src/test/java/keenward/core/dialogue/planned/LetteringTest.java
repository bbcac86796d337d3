package keenward.core.dialogue.planned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LetteringTest {
  private static final String CAPITALS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .-";

  @ParameterizedTest
  @CsvSource({
    "Shop door,           SHOP DOOR",
    "Café front,          CAFE FRONT",
    "Büro/Küche,          BURO KUCHE",
    "'  two   blanks  ',  TWO BLANKS",
    "Gate (No. 2),        GATE NO. 2",
    "'ÿ',                 Y"
  })
  void namesAreWrittenWithTheLettersOfThePanel(String text, String written) {
    assertThat(Lettering.withLetters(text, CAPITALS)).isEqualTo(written);
  }

  @Test
  void aLetterThatThePanelHasStaysAsItIs() {
    assertThat(Lettering.withLetters("Café", "Cafeé")).isEqualTo("Café");
    assertThat(Lettering.withLetters("ABC", "abc")).isEqualTo("abc");
    assertThat(Lettering.withLetters("a?b", "ab")).isEqualTo("ab");
  }

  /** Vowels inside words go first, from the end; then blanks; then the end is cut off. */
  @ParameterizedTest
  @CsvSource({
    "BACK BEDROOM WINDOW, 18, BACK BEDROOM WINDW",
    "BACK BEDROOM WINDOW, 14, BACK BDRM WNDW",
    "BACK BEDROOM WINDOW, 12, BCK BDRMWNDW",
    "BACK BEDROOM WINDOW, 11, BCKBDRMWNDW",
    "BACK BEDROOM WINDOW, 6,  BCKBDR",
    "AEIOU AEIOU,         4,  AE A",
    "FITS,                4,  FITS"
  })
  void longNamesAreShortenedByTheStatedRule(String text, int length, String shortened) {
    assertThat(Lettering.shortened(text, length)).isEqualTo(shortened);
  }

  @Test
  void shorteningNeverExceedsTheLengthAndKeepsTheFirstLetter() {
    for (long seed = 1; seed <= 500; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int place = 0; place < 1 + random.nextInt(30); place++) {
        text.append(CAPITALS.charAt(random.nextInt(CAPITALS.length())));
      }
      String name = Lettering.withLetters(text.toString(), CAPITALS);
      int length = 1 + random.nextInt(20);
      String shortened = Lettering.shortened(name, length);
      assertThat(shortened.length()).as("seed %d", seed).isLessThanOrEqualTo(length);
      if (!name.isEmpty()) {
        assertThat(shortened).as("seed %d", seed).startsWith(name.substring(0, 1));
      }
      if (name.length() <= length) {
        assertThat(shortened).as("seed %d", seed).isEqualTo(name);
      }
    }
  }
}
