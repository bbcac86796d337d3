package keenward.core.electrical.loop;

import static keenward.core.plan.ContactForm.NORMALLY_CLOSED;
import static keenward.core.plan.LoopWiring.DOUBLE_RESISTOR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults do to a loop is common practice, no source; the sums are Ohm's law. */
class FaultFinderTest {

  /** 40 m of 0.22 mm2 add 6.3 ohm. */
  private static Loop loop(String... resistors) {
    return LoopTest.loop(
        LoopTolerances.USUAL,
        DOUBLE_RESISTOR,
        NORMALLY_CLOSED,
        zone -> zone.loopCable("40 m", "0.22 mm2"),
        resistors);
  }

  private static List<String> words(double ohms) {
    return FaultFinder.find(loop("4.7 kohm", "2.2 kohm"), ohms).stream()
        .map(Diagnosis::what)
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4706 | The loop is at rest.",
        "6906 | The loop is in alarm.",
        "0    | The loop is shorted.",
        "3    | A short about 19 m from the panel.",
        "2351 | A second end-of-line resistor across the loop",
        "2206 | The end-of-line resistor is bridged or missing, and the contact is open.",
        "3306 | A resistor of 3.3 kohm in place of the end-of-line resistor of 4.7 kohm.",
        "5706 | A resistor of 1 kohm in place of the alarm resistor, its contact open, of 2.2 kohm.",
        "4980 | A bad joint or a dirty contact of about 273.7 ohm, the loop at rest.",
        "4400 | Damp or a damaged cable: about 67.",
        "9106 | 2 contacts are open, each with an alarm resistor of its own.",
        "50000000 | The loop is cut."
      })
  void theLikeliestMeaningIsAmongTheFirst(double ohms, String meaning) {
    List<String> words = words(ohms);
    assertThat(words.subList(0, Math.min(3, words.size())))
        .anyMatch(each -> each.startsWith(meaning));
  }

  @Test
  void whatTheLoopCanBeInComesFirst() {
    assertThat(words(4706).getFirst()).isEqualTo("The loop is at rest.");
    assertThat(words(6906).getFirst()).isEqualTo("The loop is in alarm.");
    assertThat(words(Double.POSITIVE_INFINITY)).singleElement().asString().contains("cut");
  }

  @Test
  void showsItsSums() {
    assertThat(FaultFinder.find(loop("4.7 kohm", "4.7 kohm"), 14_106))
        .anySatisfy(
            each -> assertThat(each.working()).isEqualTo("4.7 kohm + 2 x 4.7 kohm = 14.11 kohm"));
  }

  @Test
  void takesAnyReadingAndRanksWithoutGaps() {
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      double ohms = Math.pow(10, random.nextDouble() * 10 - 2);
      List<Diagnosis> found = FaultFinder.find(loop("4.7 kohm", "2.2 kohm"), ohms);
      for (int rank = 1; rank <= found.size(); rank++) {
        assertThat(found.get(rank - 1).rank()).isEqualTo(rank);
      }
    }
    assertThatIllegalArgumentException().isThrownBy(() -> words(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> words(Double.NaN));
  }
}
