package keenward.core.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The stated defaults against CP-01's defaults and ranges, as reference/cp01.csv gives them with
 * source and whether read or from memory. Settings of which CP-01 says nothing are common practice,
 * no source.
 */
class SettingsAgainstStandardTest {

  private static final Path TABLE = Path.of("src/test/resources/reference/cp01.csv");
  private static final Pattern RANGE = Pattern.compile("([0-9]+)-([0-9]+) s");

  @ParameterizedTest
  @CsvSource({
    "exit time, EXIT_TIME, 60 s",
    "abort window (dialler delay), ABORT_WINDOW, 30 s",
  })
  void keepsToDefaultAndRange(String feature, TimingSetting setting, String usual)
      throws IOException {
    String row = row(feature);
    assertThat(row).contains("," + usual + ",");
    int seconds = setting.standard() / 10;
    assertThat(seconds + " s").isEqualTo(usual);
    Matcher range = RANGE.matcher(row);
    assertThat(range.find()).isTrue();
    assertThat(seconds)
        .isBetween(Integer.parseInt(range.group(1)), Integer.parseInt(range.group(2)));
  }

  @Test
  void keepsTheCancelWindow() throws IOException {
    assertThat(row("cancel window")).contains(",5 min,not less than 5 min,");
    assertThat(TimingSetting.CANCEL_WINDOW.standard()).isEqualTo(3000);
  }

  @Test
  void waitsAfterARestart() throws IOException {
    assertThat(row("restoration of power after total loss")).contains(",60 s,>= 60 s,");
    assertThat(TimingSetting.START_UP_TIME.standard()).isEqualTo(600);
    assertThat(Option.RESTART_KEEPS_ARMED.standard()).isTrue();
  }

  @Test
  void resetsSwingersAfterTwoDays() throws IOException {
    assertThat(row("swinger exclusions and reset")).contains("after 48 h without a trip");
    assertThat(TimingSetting.SWINGER_RESET.standard()).isEqualTo(48 * 36_000);
  }

  @Test
  void restartsTheExitTimeAndStaysWhereNobodyLeft() throws IOException {
    assertThat(row("exit time restart")).contains(",on,on/off");
    assertThat(Option.EXIT_RESTART.standard()).isTrue();
    assertThat(row("unvacated premises")).contains(",on,on/off");
    assertThat(Option.AUTOMATIC_STAY.standard()).isTrue();
  }

  private static String row(String feature) throws IOException {
    List<String> lines = Files.readAllLines(TABLE);
    return lines.stream().filter(line -> line.startsWith(feature)).findFirst().orElseThrow();
  }
}
