package keenward.core.dialogue.prepare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.SmallPanel;
import keenward.core.dialogue.order.Group;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.OrderRequest;
import keenward.core.dialogue.order.OrderWords;
import keenward.core.dialogue.order.Prepared;
import keenward.core.dialogue.order.Reason;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.progress.Progress;
import keenward.core.progress.WorkStopped;
import org.junit.jupiter.api.Test;

class OrdersTest {

  private static List<String> lines(List<Instruction> instructions) {
    List<String> lines = new ArrayList<>();
    for (Instruction instruction : instructions) {
      lines.add(instruction.screen() + ": " + OrderWords.line(instruction));
    }
    return lines;
  }

  private static List<String> lines(Prepared.Ready ready) {
    return lines(ready.order().instructions());
  }

  @Test
  void changingOneDelayIsAHandfulOfKeys() {
    Prepared.Ready ready = new SmallOrders().plan("delay", 0, new Value.Whole(45)).ready();
    assertThat(lines(ready))
        .containsExactly(
            "ready: hold ok for 3 s",
            "code: code \"factory\"",
            "top: down, ok",
            "delay: 4, 5, ok",
            "top: up, ok");
    assertThat(ready.order().shortness().exact()).isTrue();
    assertThat(ready.order().shortness().acts()).isEqualTo(9);
    assertThat(ready.order().effort().keys()).isEqualTo(9);
    assertThat(ready.proof().proved()).isTrue();
  }

  @Test
  void aWholeOrderEndsWithWhatWasPlannedAndNothingElse() {
    SmallOrders orders = new SmallOrders().usual();
    Prepared.Ready ready = orders.ready();
    Memory end = ready.proof().finalMemory().orElseThrow();
    Memory expected = orders.found;
    for (Map.Entry<Slot, Value> entry : orders.planned.entrySet()) {
      expected = expected.with(entry.getKey(), entry.getValue());
    }
    assertThat(end).isEqualTo(expected);
    assertThat(ready.order().groups().stream().map(Group::title))
        .containsExactlyInAnyOrder("way in", "zone 1", "zone 2", "settings", "way out");
    assertThat(ready.order().passing()).isEmpty();
    assertThat(ready.order().overwritten()).isEmpty();
  }

  @Test
  void namesAreTappedLetterByLetterAndTwoLettersOfOneKeyAreHeldApart() {
    Prepared.Ready ready =
        new SmallOrders()
            .find("zone.kind", 2, new Value.Word("wired"))
            .plan("zone.name", 2, new Value.Text("BED"))
            .ready();
    assertThat(lines(ready)).contains("name: 2 × 2 (B), 3 × 2 (E), #, 3 (D), ok");
  }

  @Test
  void aFieldThatIsRightIsPassedOver() {
    Prepared.Ready ready =
        new SmallOrders()
            .find("zone.kind", 1, new Value.Word("wired"))
            .plan("zone.kind", 1, new Value.Word("wired"))
            .plan("zone.groups", 1, new Value.Members(3))
            .ready();
    assertThat(lines(ready)).contains("kind: ok", "groups: 2, ok");
  }

  @Test
  void aTransmitterIsMadeToSendFromTheRightInput() {
    Prepared.Ready ready = new SmallOrders().usual().ready();
    assertThat(lines(ready)).contains("listen: make transmitter 4711 send from its clamp");
  }

  @Test
  void everyGroupEndsWhereOneCanLeaveAndComeBack() {
    WorkOrder order = new SmallOrders().usual().ready().order();
    for (Group group : order.groups()) {
      if (group.part() == Group.Part.RECORD || group.part() == Group.Part.SETTINGS) {
        assertThat(group.stop()).as(group.title()).isPresent();
        assertThat(lines(group.stop().orElseThrow().leave())).last().isEqualTo("top: up, ok");
        assertThat(lines(group.stop().orElseThrow().comeBack()))
            .startsWith("ready: wait 19.6 s", "ready: hold ok for 3 s", "code: code \"factory\"");
      }
    }
  }

  @Test
  void aStepSaysHowLongOneMayWaitAndWhatIsLostOtherwise() {
    WorkOrder order = new SmallOrders().usual().ready().order();
    Instruction.Step naming =
        Instruction.steps(order.instructions()).stream()
            .filter(step -> step.screen().equals("name") && step.thenScreen().equals("listen"))
            .findFirst()
            .orElseThrow();
    // Idle time 60 s, less 3 s and the lag for the slowest key.
    assertThat(naming.mayWaitTenths()).hasValue(600 - 34);
    assertThat(naming.whenLeftAlone().orElseThrow().lost().stream().map(Slot::describe))
        .contains("zone 1 kind", "zone 1 groups");
    int first = naming.whenLeftAlone().orElseThrow().goOnAt().orElseThrow();
    assertThat(first).isLessThan(naming.number());
    assertThat(naming.takesTenths()).isPositive();
  }

  @Test
  void nothingToDoIsAnEmptyOrder() {
    Prepared.Ready ready = new SmallOrders().plan("delay", 0, new Value.Whole(30)).ready();
    assertThat(ready.order().nothingToDo()).isTrue();
    assertThat(ready.proof().proved()).isTrue();
  }

  @Test
  void anUnknownValueIsReadFirstAndLeftAloneWhereItIsRight() {
    SmallOrders orders = new SmallOrders().plan("delay", 0, new Value.Whole(45));
    orders.found = orders.layout.unknown();
    Prepared.Ready ready = orders.ready();
    Instruction.Branch branch =
        ready.order().instructions().stream()
            .filter(Instruction.Branch.class::isInstance)
            .map(Instruction.Branch.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(branch.now().lines()).containsExactly("Delay", "?");
    assertThat(branch.cases().get(0).shows()).containsExactly("Delay", "45");
    assertThat(lines(branch.cases().get(0).instructions())).containsExactly("delay: ok");
    assertThat(branch.cases().get(1).otherwise()).isTrue();
    assertThat(lines(branch.cases().get(1).instructions())).containsExactly("delay: 4, 5, ok");
    assertThat(ready.order().assumptions()).hasSize(1);
    assertThat(ready.order().overwritten()).isEmpty();
  }

  @Test
  void anUnknownChoiceIsScrolledUntilItShowsWhatIsWanted() {
    SmallOrders orders = new SmallOrders().plan("zone.kind", 1, new Value.Word("wired"));
    orders.found = orders.layout.unknown();
    orders.consents = Set.of("zone.name");
    assertThat(lines(orders.ready()))
        .contains("kind: from unused press down; from radio press up until it shows wired");
  }

  @Test
  void ofUnknownOptionsOnlyTheWrongOnesAreSwitched() {
    SmallOrders orders =
        new SmallOrders()
            .find("zone.kind", 1, new Value.Word("wired"))
            .find("zone.groups", 1, Value.unknown())
            .plan("zone.groups", 1, new Value.Members(5));
    Prepared.Ready ready = orders.ready();
    assertThat(lines(ready))
        .contains("groups: if 1 is off press 1; if 2 is on press 2; if 3 is off press 3");
    assertThat(ready.proof().casesReplayed()).isGreaterThanOrEqualTo(2);
  }

  @Test
  void whatIsNotKnownAndNotShownNeedsConsent() {
    SmallOrders orders = new SmallOrders().plan("account", 0, new Value.Text("1234"));
    orders.found = orders.found.with(orders.layout.slot("account", 0), Value.unknown());
    // The account is shown where it is entered first, but not where it is entered again and stored.
    assertThat(orders.refused().reasons())
        .singleElement()
        .satisfies(reason -> {
          assertThat(reason.kind()).isEqualTo(Reason.Kind.CONSENT_NEEDED);
          assertThat(reason.remedy()).contains("overwrite account unseen");
        });
    orders.consents = Set.of("account");
    assertThat(orders.ready().order().overwritten())
        .singleElement()
        .satisfies(one -> assertThat(one.slot().describe()).isEqualTo("account"));
  }

  @Test
  void anUnknownFieldOutsideThePlanIsNotResetWithoutConsent() {
    SmallOrders orders =
        new SmallOrders()
            .find("zone.name", 1, Value.unknown())
            .plan("zone.kind", 1, new Value.Word("wired"));
    assertThat(orders.refused().reasons())
        .singleElement()
        .satisfies(reason -> assertThat(reason.what()).contains("zone 1 name", "zone 1 kind"));
  }

  @Test
  void aKnownFieldThatASideEffectResetsIsPutBack() {
    SmallOrders orders =
        new SmallOrders()
            .find("zone.kind", 1, new Value.Word("wired"))
            .find("zone.name", 1, new Value.Text("AB"))
            .plan("zone.kind", 1, new Value.Word("radio"));
    Prepared.Ready ready = orders.ready();
    assertThat(ready.order().passing())
        .singleElement()
        .satisfies(change -> {
          assertThat(change.slot().describe()).isEqualTo("zone 1 name");
          assertThat(change.putBack()).isTrue();
        });
    assertThat(ready.proof().finalMemory().orElseThrow().get(orders.layout.slot("zone.name", 1)))
        .isEqualTo(new Value.Text("AB"));
  }

  @Test
  void whatCannotBeReachedIsAListOfReasons() {
    SmallOrders lamps = new SmallOrders().plan("delay", 0, new Value.Whole(45));
    lamps.keypad = SmallPanel.LAMPS;
    assertThat(lamps.refused().reasons())
        .extracting(Reason::kind)
        .containsExactly(Reason.Kind.NOT_ON_THIS_KEYPAD);
    SmallOrders none = new SmallOrders().plan("delay", 0, new Value.Whole(45));
    none.keypad = "none such";
    assertThat(none.refused().reasons())
        .singleElement()
        .satisfies(reason -> assertThat(reason.remedy()).contains("text, lamps"));
    assertThat(
            new SmallOrders()
                .plan("delay", 0, new Value.Whole(47))
                .plan("zone.name", 2, new Value.Text("TOO LONG"))
                .refused()
                .reasons())
        .extracting(Reason::kind)
        .containsExactly(Reason.Kind.OUT_OF_RANGE, Reason.Kind.OUT_OF_RANGE);
    assertThat(new SmallOrders().plan("code", 0, new Value.Secret("other")).refused().reasons())
        .extracting(Reason::kind)
        .containsExactly(Reason.Kind.NOT_WRITABLE);
    assertThat(new SmallOrders().plan("zone.name", 1, new Value.Text("AB")).refused().reasons())
        .extracting(Reason::kind)
        .containsExactly(Reason.Kind.NO_WAY);
  }

  @Test
  void theSameInputOfATransmitterCannotBeLearntTwice() {
    SmallOrders orders = new SmallOrders();
    for (int zone = 1; zone <= 2; zone++) {
      orders
          .plan("zone.kind", zone, new Value.Word("radio"))
          .plan("zone.unit", zone, new Value.Text("4711"))
          .plan("zone.part", zone, new Value.Word("clamp"));
    }
    assertThat(orders.refused().reasons())
        .extracting(Reason::kind)
        .containsExactly(Reason.Kind.TRANSMITTER_KNOWN);
  }

  @Test
  void anOrderStopsWhereAnUnknownRecordTurnsOutToKnowTheTransmitter() {
    SmallOrders orders = new SmallOrders().usual();
    orders.find("zone.unit", 3, Value.unknown()).find("zone.part", 3, Value.unknown());
    Prepared.Ready ready = orders.ready();
    assertThat(ready.proof().halts()).hasSize(1);
    assertThat(lines(ready)).anyMatch(line -> line.contains("What does it show for zone 1 unit"));
  }

  @Test
  void theCanonicalTextFixesEverythingAndNamesCodesByReferenceOnly() {
    SmallOrders orders = new SmallOrders().usual();
    String text = orders.ready().canonical();
    assertThat(new SmallOrders().usual().ready().canonical()).isEqualTo(text);
    assertThat(text).contains("factory");
    SmallOrders other = new SmallOrders().usual().find("zone.part", 3, new Value.Word("clamp"));
    assertThat(other.ready().canonical()).isNotEqualTo(text);
  }

  @Test
  void aMemoryOfAnotherPanelIsRefusedAtOnce() {
    SmallOrders orders = new SmallOrders().usual();
    OrderRequest request =
        new OrderRequest(
            orders.description,
            Memory.of(new Value[] {Value.nothing()}),
            orders.planned,
            SmallPanel.TEXT,
            Set.of());
    assertThatThrownBy(() -> Orders.prepare(request, Progress.SILENT))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void workThatIsNoLongerWantedStops() {
    SmallOrders orders = new SmallOrders().usual();
    assertThatThrownBy(() -> Orders.prepare(orders.request(), (what, done, total) -> false))
        .isInstanceOf(WorkStopped.class);
  }
}
