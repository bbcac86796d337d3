package keenward.files.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import keenward.core.dialogue.description.LiveRecords;
import keenward.core.dialogue.description.PanelDescription;
import org.junit.jupiter.api.Test;

class LiveRecordsTest {
  private static final String PANEL =
      """
      keenward-panel: 1
      panel: Example 4
      family: other
      keypads:
        main: { shows: text, columns: 20, keys: ["1", "2", "3", "4", ok, back, more], lag: 0.3 s }
      records:
        zone: { numbers: 1..4 }
        way: { numbers: 1..4 }
      memory:
        zone:
          task: { choice: [off, door], default: off }
        way:
          time: { number: 1..4, default: 1 }
      kept: at once
      start: ready
      screens:
        ready: { programming: no, shows: [Ready], keys: { ok: top } }
        top: { shows: [Top], keys: { "1": which zone, "2": { do: choose way 1, go: way time }, back: leave out } }
        which zone: { shows: ["Zone?"], digits: { length: 1, record: zone, confirm: ok, then: zone task, empty: EMPTY }, keys: { back: top } }
        zone task: { shows: ["{zone.task}"], scroll: { field: zone.task, next: more, confirm: ok, then: top } }
        way time: { shows: ["Way {way}"], scroll: { field: way.time, next: more, confirm: ok, then: next way please } }
        next way please: { shows: [More?], keys: { ok: { do: next way, go: way time }, back: top } }
      leaving:
        out: { keeps: stored, goes: ready, safe: yes }
      """;

  @Test
  void aRecordIsDeadWhereAnotherChoiceComesBeforeAnyUse() {
    PanelDescription panel = panel("top");
    assertThat(LiveRecords.of(panel).get("top")).isEmpty();
    assertThat(LiveRecords.of(panel).get("which zone")).isEmpty();
    assertThat(LiveRecords.of(panel).get("zone task")).containsExactly("zone");
    assertThat(LiveRecords.of(panel).get("next way please")).containsExactly("way");
  }

  @Test
  void aRecordLivesWhereConfirmingNothingGoesOnWithIt() {
    PanelDescription panel = panel("zone task");
    assertThat(LiveRecords.of(panel).get("which zone")).containsExactly("zone");
    assertThat(LiveRecords.of(panel).get("top")).containsExactly("zone");
  }

  private static PanelDescription panel(String whenEmpty) {
    byte[] bytes = PANEL.replace("EMPTY", whenEmpty).getBytes(StandardCharsets.UTF_8);
    return PanelDescriptionReader.read("example-4.panel.yaml", bytes).description().orElseThrow();
  }
}
