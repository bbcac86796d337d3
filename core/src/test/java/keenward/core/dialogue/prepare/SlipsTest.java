package keenward.core.dialogue.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.SmallPanel;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.Prepared;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.dialogue.replay.Replay;
import keenward.core.dialogue.replay.Slips;
import keenward.core.progress.Progress;
import org.junit.jupiter.api.Test;

/**
 * Every slip of one key either makes no difference or is refuted. What a slip really does is found
 * out here by pressing the keys without looking, and compared with what the replay says.
 */
class SlipsTest {

  @Test
  void everySlipOfOneKeyIsHarmlessOrRefuted() {
    SmallOrders orders = new SmallOrders().usual();
    checkBlindly(orders);
    Map<Slips.Outcome, Integer> outcomes = tally(orders);
    // Out of 52 acts: nearly all slips show at once; a few, such as digits exchanged, only in the
    // end.
    assertThat(outcomes.get(Slips.Outcome.SHOWN)).isGreaterThan(100);
    assertThat(outcomes.getOrDefault(Slips.Outcome.ONLY_IN_THE_END, 0)).isPositive();
  }

  @Test
  void slipsAreRefutedToWhereThePanelKeepsAtOnce() {
    SmallOrders orders =
        new SmallOrders(SmallPanel.description(true, Leaving.Saves.TYPED_TOO)).usual();
    checkBlindly(orders);
  }

  @Test
  void leavingAnyStepAloneUntilItDropsOutIsRefuted() {
    SmallOrders orders = new SmallOrders().usual();
    Prepared.Ready ready = orders.ready();
    Interpreter interpreter = new Interpreter(orders.description);
    for (Slips.Slip slip :
        Slips.of(interpreter, orders.found, ready.order(), orders.planned, Progress.SILENT)) {
      if (slip.kind() == Slips.Kind.LEFT_ALONE) {
        String screen = screen(ready.order(), slip.atInstruction());
        // Nothing drops out before programming is open, nor while listening.
        boolean safe = List.of("ready", "code", "listen").contains(screen);
        assertThat(slip.outcome())
            .as(slip + " at " + screen)
            .isEqualTo(safe ? Slips.Outcome.HARMLESS : Slips.Outcome.SHOWN);
      }
    }
  }

  @Test
  void slipsInAnOrderWithBranchesAreTriedToo() {
    SmallOrders orders =
        new SmallOrders()
            .find("delay", 0, Value.unknown())
            .find("zone.kind", 1, Value.unknown())
            .plan("delay", 0, new Value.Whole(45))
            .plan("zone.kind", 1, new Value.Word("wired"))
            .plan("zone.name", 1, new Value.Text("BED"));
    List<Slips.Slip> slips =
        Slips.of(
            new Interpreter(orders.description),
            orders.found,
            orders.ready().order(),
            orders.planned,
            Progress.SILENT);
    assertThat(slips).extracting(Slips.Slip::outcome).contains(Slips.Outcome.SHOWN);
    assertThat(slips).hasSizeGreaterThan(40);
  }

  private static Map<Slips.Outcome, Integer> tally(SmallOrders orders) {
    Map<Slips.Outcome, Integer> outcomes = new EnumMap<>(Slips.Outcome.class);
    for (Slips.Slip slip :
        Slips.of(
            new Interpreter(orders.description),
            orders.found,
            orders.ready().order(),
            orders.planned,
            Progress.SILENT)) {
      outcomes.merge(slip.outcome(), 1, Integer::sum);
    }
    return outcomes;
  }

  private static String screen(WorkOrder order, int number) {
    for (Instruction instruction : order.instructions()) {
      if (instruction.number() == number) {
        return instruction.screen();
      }
    }
    throw new AssertionError("no instruction " + number);
  }

  private static void checkBlindly(SmallOrders orders) {
    Prepared.Ready ready = orders.ready();
    Interpreter interpreter = new Interpreter(orders.description);
    Memory wanted = ready.proof().finalMemory().orElseThrow();
    List<Act> acts = new ArrayList<>();
    for (Instruction instruction : ready.order().instructions()) {
      acts.addAll(((Instruction.Step) instruction).acts());
    }
    assertThat(blindly(interpreter, orders, single(acts))).contains(wanted);
    List<Slips.Slip> slips =
        Slips.of(interpreter, orders.found, ready.order(), orders.planned, Progress.SILENT);
    for (Slips.Slip slip : slips) {
      if (slip.outcome() == Slips.Outcome.HARMLESS) {
        List<Act> slipped = slipped(ready.order(), slip, orders);
        assertThat(blindly(interpreter, orders, slipped)).as(slip.toString()).contains(wanted);
      }
    }
  }

  /** What the panel holds after these acts, if it was left safely. */
  private static Optional<Memory> blindly(
      Interpreter interpreter, SmallOrders orders, List<Act> acts) {
    State state = interpreter.start(orders.found);
    for (Act act : acts) {
      state =
          switch (act) {
            case Act.Press press ->
                interpreter.pressAndWait(state, orders.keypad, press.key()).state();
            case Act.EnterCode code ->
                interpreter.pressAndWait(state, orders.keypad, "code:" + code.reference()).state();
            case Act.Wait wait ->
                interpreter.apply(state, new Input.TimePasses(wait.tenths())).state();
            case Act.Transmit send ->
                interpreter
                    .apply(state, new Input.TransmitterHeard(send.serial(), send.part()))
                    .state();
            case Act.PowerOff off -> interpreter.apply(state, new Input.PowerLost()).state();
            case Act.PowerOn on -> interpreter.apply(state, new Input.PowerBack()).state();
          };
    }
    boolean safe =
        !interpreter.programmingOpen(state)
            && state.left().filter(left -> left.safe() && !left.locked()).isPresent();
    return safe ? Optional.of(state.committed()) : Optional.empty();
  }

  private static List<Act> single(List<Act> acts) {
    List<Act> single = new ArrayList<>();
    for (Act act : acts) {
      if (act instanceof Act.Press press) {
        for (int time = 0; time < press.times(); time++) {
          single.add(new Act.Press(press.key(), 1, press.heldTenths(), ""));
        }
      } else {
        single.add(act);
      }
    }
    return single;
  }

  /** The order's acts with a slip in them, made independently of the code under test. */
  private static List<Act> slipped(WorkOrder order, Slips.Slip slip, SmallOrders orders) {
    List<Act> acts = new ArrayList<>();
    int at = -1;
    for (Instruction instruction : order.instructions()) {
      if (instruction.number() == slip.atInstruction()) {
        at = acts.size() + slip.key();
      }
      acts.addAll(single(((Instruction.Step) instruction).acts()));
    }
    switch (slip.kind()) {
      case LEFT_OUT -> acts.remove(at);
      case PRESSED_TWICE -> acts.add(at, acts.get(at));
      case EXCHANGED -> acts.add(at, acts.remove(at + 1));
      case LEFT_ALONE -> acts.add(at, new Act.Wait(orders.description.manners().idleTenths()));
    }
    return acts;
  }

  @Test
  void aWrongTransmitterAndAWrongInputAreRefuted() {
    SmallOrders orders = new SmallOrders().usual();
    WorkOrder order = orders.ready().order();
    for (Act.Transmit wrong :
        List.of(new Act.Transmit("4712", "clamp", 1), new Act.Transmit("4711", "magnet", 1))) {
      WorkOrder other = Changed.acts(order, act -> act instanceof Act.Transmit ? wrong : act);
      assertThat(
              Replay.run(orders.description, orders.found, other, orders.planned, Progress.SILENT)
                  .proved())
          .isFalse();
    }
  }
}
