package keenward.core.dialogue.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.Prepared;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.progress.Progress;
import org.junit.jupiter.api.Test;

/**
 * Orders are as short as JGraphT's Dijkstra finds them over every state of the dialogue, on random
 * small panels with random memories; and where Dijkstra finds no way, no order is made.
 */
class ShortestKeysTest {
  private static final int PANELS = Integer.getInteger("keenward.panels", 400);
  private static final int AT_LEAST_COMPARED = 150;

  @Test
  void ordersAreAsShortAsDijkstraFindsThemOverAllStates() {
    int compared = 0;
    int reached = 0;
    for (long seed = 1; seed <= PANELS; seed++) {
      RandomPanel panel = new RandomPanel(seed);
      PanelDescription description = panel.description();
      Interpreter interpreter = new Interpreter(description);
      Random random = new Random(seed * 7919);
      Memory found = interpreter.layout().initial();
      Map<Slot, Value> planned = new LinkedHashMap<>();
      for (Slot slot : interpreter.layout().slots()) {
        if (random.nextBoolean()) {
          found = found.with(slot, panel.any(slot.field().type()));
        }
        if (slot.record() != 2 && random.nextInt(3) > 0) {
          planned.put(slot, panel.any(slot.field().type()));
        }
      }
      ExplicitGraph graph = new ExplicitGraph(interpreter, RandomPanel.KEYPAD, found, planned);
      if (graph.nothingToDo()) {
        continue;
      }
      ExplicitGraph.Answer answer = graph.shortest();
      if (answer.tooLarge()) {
        continue;
      }
      compared++;
      Prepared prepared =
          Orders.prepare(
              new OrderRequest(description, found, planned, RandomPanel.KEYPAD, Set.of()),
              Progress.SILENT);
      switch (prepared) {
        case Prepared.Refused refused ->
            assertThat(answer.shortest()).as("seed %d: %s", seed, refused.reasons()).isEmpty();
        case Prepared.Ready ready -> {
          WorkOrder order = ready.order();
          if (order.passing().stream().anyMatch(change -> !change.putBack())) {
            // Without a lasting side effect there is no way, and Dijkstra allows none.
            assertThat(answer.shortest()).as("seed %d", seed).isEmpty();
            continue;
          }
          reached++;
          assertThat(answer.shortest()).as("seed %d", seed).isPresent();
          long length = order.shortness().acts() * ExplicitGraph.ACT + order.effort().panelTenths();
          assertThat(length)
              .as("seed %d, %d states", seed, answer.states())
              .isEqualTo(answer.shortest().getAsLong());
          assertThat(order.shortness().exact()).as("seed %d", seed).isTrue();
        }
      }
    }
    System.out.println(compared + " compared, " + reached + " reached");
    assertThat(compared).isGreaterThanOrEqualTo(AT_LEAST_COMPARED);
    assertThat(reached).isGreaterThanOrEqualTo(AT_LEAST_COMPARED / 2);
  }
}
