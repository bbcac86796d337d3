package keenward.core.rules.labels;

import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NameWithoutPlaceTest {

  private final NameWithoutPlace rule = new NameWithoutPlace();

  @ParameterizedTest
  @ValueSource(strings = {"Zone 3", "PIR-2", "3", "Radio sensor no. 4", "MOTION"})
  void findsNamesThatSayNoPlace(String name) {
    assertThat(findings(rule, PlanBuilder.site().zone(3, name, INSTANT)))
        .containsExactly(
            "advice at zones / 3 / name: Zone 3 '"
                + name
                + "' has a name that does not say where it is.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Hall motion", "Safe", "Bureau 2", "Zone industrielle"})
  void passesNamesWithAnyOtherWord(String name) {
    assertThat(findings(rule, PlanBuilder.site().zone(3, name, INSTANT))).isEmpty();
  }

  @Test
  void judgesEveryZone() {
    assertThat(
            run(rule, PlanBuilder.site().zone(1, "Hall", INSTANT).zone(2, "Store", INSTANT))
                .judgedCount())
        .isEqualTo(2);
  }
}
