package keenward.core.rehearsal.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import keenward.core.Golden;
import keenward.core.rehearsal.Behaviour;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Systems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimelineTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "04-exit-error",
        "07-follower-waits",
        "20-fire-over-burglary",
        "25-chime",
        "26-swinger",
        "28-cancel",
        "37-through-the-hall",
        "40-programming-alarm"
      })
  void staysAsItWasRead(String name) {
    CaseFile file =
        CaseFile.all().stream()
            .filter(each -> each.name().equals(name + ".scenario"))
            .findFirst()
            .orElseThrow();
    Rehearsal.Result result =
        Rehearsal.run(
            file.model(), ScriptParser.parse(file.script(), file.model()).script().orElseThrow());
    Golden.assertSame(
        Path.of("src/test/resources/rehearsal/timelines", name + ".txt"),
        result.timeline().text(true));
  }

  @Test
  void givesTheChainBackToTheInput() {
    Timeline timeline =
        run(
            """
            t+0 arm away by Ann at fob
            t+100 open D1 for 2 s
            t+110 violate motion for 1 s
            """);
    Because alarm = because(timeline, 1600, RowKind.SIGNAL);
    assertThat(alarm.input()).contains(new Input.ZoneOpened(0));
    assertThat(alarm.atTenths()).isEqualTo(1000);
    assertThat(alarm.steps())
        .extracting(Because.Step::behaviour)
        .containsExactly(
            Behaviour.ENTRY_STARTED,
            Behaviour.ENTRY_ENDED,
            Behaviour.ABORT_WINDOW_STARTED,
            Behaviour.ABORT_WINDOW_ENDED);
    assertThat(alarm.steps())
        .extracting(Because.Step::atTenths)
        .containsExactly(1000, 1300, 1300, 1600);
    Because waits = because(timeline, 1100, RowKind.NO_EFFECT);
    assertThat(waits.input()).contains(new Input.ZoneOpened(2));
    assertThat(waits.steps().getLast().given().getFirst().input())
        .contains(new Input.ZoneOpened(0));
  }

  @Test
  void keepsInputsAndOutputsBesideTheWords() {
    Timeline timeline = run("t+0 open D1\n");
    assertThat(timeline.rows().getFirst().input()).contains(new Input.ZoneOpened(0));
    assertThat(timeline.rows().get(1).output()).containsInstanceOf(Output.Annunciation.class);
    assertThat(timeline.text(false))
        .isEqualTo(
            """
            00:00:00  input        D1 opens
            00:00:00  keypad tone  A: chime
            """);
  }

  @Test
  void tellsWhatWasNotMet() {
    SystemModel model = Systems.ofTheCases();
    String script =
        """
        t+0 violate smoke
        expect t+0 signal 1111 zone "smoke 2"
        expect t+1 signal 1111
        expect t+1 sounder burglary
        expect t+1 strobe off
        expect t+1 A armed away
        expect t+0 shows "flood"
        expect never "smoke"
        expect no signal 1111
        expect no other signal
        expect t+5 signal 1115
        """;
    Rehearsal.Result result =
        Rehearsal.run(model, ScriptParser.parse(script, model).script().orElseThrow());
    assertThat(result.unmet())
        .extracting(Unmet::line)
        .containsExactly(2, 3, 4, 5, 6, 7, 8, 8, 8, 9, 11, 10);
    assertThat(result.unmet().getFirst().text())
        .isEqualTo(
            "2: expected signal 1111 at 00:00:00; signals: 00:00:00 1111 01 012 smoke detector operated, new event: smoke");
    assertThat(result.unmet().get(2).text())
        .isEqualTo("4: expected sounder burglary at 00:00:01; it is fire");
    assertThat(result.unmet().get(4).text())
        .isEqualTo("6: expected A armed away at 00:00:01; it is disarmed");
    assertThat(result.unmet().get(10).text())
        .isEqualTo("11: expected signal 1115 at 00:00:05; no such signal left");
  }

  @Test
  void writesTimesAsPeopleDo() {
    assertThat(TimeText.clock(0)).isEqualTo("00:00:00");
    assertThat(TimeText.clock(864_000 + 36_005)).isEqualTo("day 2 01:00:00.5");
    assertThat(List.of(5, 300, 900, 1200, 1205, 36_000, 864_000))
        .extracting(TimeText::length)
        .containsExactly("0.5 s", "30 s", "90 s", "2 min", "120.5 s", "60 min", "24 h");
  }

  private static Timeline run(String text) {
    SystemModel model = Systems.ofTheCases();
    return Rehearsal.run(model, ScriptParser.parse(text, model).script().orElseThrow()).timeline();
  }

  private static Because because(Timeline timeline, int atTenths, RowKind kind) {
    return timeline.rows().stream()
        .filter(row -> row.atTenths() == atTenths && row.kind() == kind)
        .map(Row::because)
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow();
  }
}
