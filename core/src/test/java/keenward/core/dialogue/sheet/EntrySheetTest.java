package keenward.core.dialogue.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

class EntrySheetTest {

  @Test
  void listsEveryZoneWithWhatThePlanStatesAndNothingElse() {
    EntrySheet sheet =
        EntrySheet.of(PlanBuilder.site().zone(1, "Kiosk door", ZoneResponse.ENTRY_EXIT).build());
    EntrySheet.Part zone =
        sheet.parts().stream()
            .filter(part -> part.title().equals("Zone 1"))
            .findFirst()
            .orElseThrow();
    assertThat(zone.values())
        .extracting(value -> value.what() + ": " + value.value())
        .containsExactly("Name: Kiosk door", "Response: entry-exit", "Live in: away, stay, night");
    assertThat(zone.values().getLast().source()).isEqualTo("usual for entry-exit");
  }

  @Test
  void saysWhereADefaultComesFrom() {
    EntrySheet sheet = EntrySheet.of(PlanBuilder.site().build());
    assertThat(sheet.parts().getFirst().values())
        .filteredOn(value -> value.what().equals("Exit time"))
        .extracting(EntrySheet.Value::source)
        .containsExactly("default of this program");
  }
}
