package keenward.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import keenward.core.plan.PlanPath;
import org.junit.jupiter.api.Test;

class PlaceOrderTest {

  @Test
  void readsSectionsFromTopToBottomAndNumbersByValue() {
    List<PlanPath> inOrder =
        List.of(
            PlanPath.of("regime"),
            PlanPath.of("devices", "2"),
            PlanPath.of("devices", "10"),
            PlanPath.of("devices", "1a"),
            PlanPath.of("devices", "Eye"),
            PlanPath.of("panel"),
            PlanPath.of("panel", "exit time"),
            PlanPath.of("zones", 2, "response"),
            PlanPath.of("zones", 10),
            PlanPath.of("zones", 10, "name"),
            PlanPath.of("users", 1),
            PlanPath.of("unplaced", 0));
    List<PlanPath> shuffled = new ArrayList<>(inOrder);
    Collections.shuffle(shuffled, new Random(7));

    shuffled.sort(PlaceOrder.READING);

    assertThat(shuffled).isEqualTo(inOrder);
  }
}
