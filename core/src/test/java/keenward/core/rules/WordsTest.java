package keenward.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {

  @Test
  void listsFourNamesInFullAndOfMoreTheFirstThree() {
    assertThat(Words.someNames(List.of("a"))).isEqualTo("'a'");
    assertThat(Words.someNames(List.of("a", "b", "c", "d"))).isEqualTo("'a', 'b', 'c' and 'd'");
    assertThat(Words.someNames(List.of("a", "b", "c", "d", "e")))
        .isEqualTo("'a', 'b', 'c' and 2 more");
  }

  @Test
  void printsNumbersWithoutNoise() {
    assertThat(Words.number(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Words.number(13.8794)).isEqualTo("13.879");
    assertThat(Words.number(1200)).isEqualTo("1200");
    assertThat(Words.number(-0.0001)).isEqualTo("0");
  }

  @Test
  void countsOneAndMany() {
    assertThat(Words.count(1, "resistor")).isEqualTo("1 resistor");
    assertThat(Words.count(0, "resistor")).isEqualTo("0 resistors");
  }
}
