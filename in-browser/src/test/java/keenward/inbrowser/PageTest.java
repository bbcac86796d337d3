package keenward.inbrowser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {

  @Test
  void tellsWhatTheKeypadShowsAfterEachKey() {
    assertThat(Page.pressKeys("take-leave code:engineer take 4 5 take leave"))
        .isEqualTo(
            """
            take-leave -> Who is there? /
            code:engineer -> Settings / Time to come in
            take -> Seconds / 30
            4 -> Seconds / 4
            5 -> Seconds / 45
            take -> Settings / Time to come in; stored entry-delay
            leave -> All quiet; left: kept
            """);
  }

  @Test
  void tellsWhyAKeyWasRefusedAndWhenTheKeypadFellBack() {
    assertThat(Page.pressKeys("leave take-leave code:engineer take 4 4 take wait:1200"))
        .contains("leave -> All quiet; refused: NO_MEANING")
        .contains("take -> Seconds / 30; refused: OUT_OF_RANGE")
        .contains("wait:1200 -> All quiet; left: idle");
  }

  @Test
  void tellsTheTimelineOfAScriptWithItsReasons() {
    String told =
        Page.rehearse(
            """
            start 08:00
            open "Street door"
            t+10 open "Yard window"
            expect t+10 signal 1131
            """);

    assertThat(told).contains("08:00:00", "Street door", "08:00:10", "Yard window");
    assertThat(told).contains("4: expected signal 1131");
  }

  @Test
  void tellsWhereAScriptIsWrong() {
    assertThat(Page.rehearse("open \"Sreet door\"\n"))
        .startsWith("1:6: there is no zone")
        .contains("Street door");
  }

  @Test
  void playsAScriptOnASystemThatItIsHanded() {
    String script = "arm away by Potter at Hall\nt+90 open \"Yard window\"\n";

    assertThat(Page.rehearseSystem(SystemText.write(SampleSystem.model()), script))
        .isEqualTo(Page.rehearse(script))
        .contains("Yard window is a perimeter zone");
  }
}
