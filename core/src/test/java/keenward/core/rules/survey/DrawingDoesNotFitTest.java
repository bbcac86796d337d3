package keenward.core.rules.survey;

import static keenward.core.plan.RoomUse.OFFICE;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.building.Building;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class DrawingDoesNotFitTest {

  private final DrawingDoesNotFit rule = new DrawingDoesNotFit();

  private static PlanBuilder rooms(double officeWest) {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor.room("Store", STORE, 0, 0, 5, 4).room("Office", OFFICE, officeWest, 0, 9, 4));
  }

  @Test
  void tellsEveryProblemOfTheDrawing() {
    PlanBuilder plan = rooms(4);
    assertThat(findings(rule, plan))
        .hasSameSizeAs(Building.of(plan.build()).problems())
        .isNotEmpty();
    assertThat(findings(rule, plan).getFirst()).startsWith("warning at floors / Ground");
  }

  @Test
  void passesRoomsThatShareAWallAndIgnoresAPlanWithoutDrawing() {
    assertThat(findings(rule, rooms(5))).isEmpty();
    assertThat(run(rule, rooms(5)).judgedCount()).isEqualTo(1);
    assertThat(run(rule, PlanBuilder.site()).judgedCount()).isZero();
  }
}
