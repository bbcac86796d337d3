package keenward.files.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Departure;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Refusal;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Transition;
import org.junit.jupiter.api.Test;

/**
 * Descriptions of unlike families behave as their files say, although the interpreter knows none of
 * them.
 */
class FamiliesTest {

  /** Somebody at a keypad. */
  private static final class Hand {
    private final Interpreter panel;
    private final String keypad;
    private State state;
    private List<String> shown = List.of();
    private Optional<Refusal> refusal = Optional.empty();
    private Optional<Departure> left = Optional.empty();

    Hand(Path file, String keypad) {
      this.panel = new Interpreter(TestPanels.description(file));
      this.keypad = keypad;
      this.state = panel.start(panel.layout().initial());
    }

    Hand press(String... keys) {
      for (String key : keys) {
        take(panel.pressAndWait(state, keypad, key));
      }
      return this;
    }

    Hand feed(Input input) {
      take(panel.apply(state, input));
      return this;
    }

    private void take(Transition transition) {
      assertThat(transition.needs()).isEmpty();
      state = transition.state();
      shown = transition.display().lines();
      refusal = transition.refusal();
      left = transition.left().or(() -> left);
    }

    Value holds(String field, int record) {
      return state.working().get(panel.layout().slot(field, record));
    }

    Value survives(String field, int record) {
      return state.committed().get(panel.layout().slot(field, record));
    }
  }

  private static Hand teasel() {
    return new Hand(TestPanels.TEASEL, "strip").press("hold square", "code:as delivered");
  }

  @Test
  void aNumberedLocationShowsWhatItHoldsAndAdvancesWhenFull() {
    Hand hand = teasel().press("1", "0", "4");
    assertThat(hand.shown).containsExactly("104 00");
    hand.press("0", "3");
    assertThat(hand.shown).containsExactly("105 00");
    assertThat(hand.survives("zone.acts", 4)).isEqualTo(new Value.Word("at once"));
    hand.press("9", "9");
    assertThat(hand.refusal).contains(Refusal.OUT_OF_RANGE);
    assertThat(hand.shown).containsExactly("105 00");
  }

  @Test
  void aLocationThatIsNotThereIsRefused() {
    Hand hand = teasel().press("1", "9", "9");
    assertThat(hand.refusal).contains(Refusal.NO_SUCH_NUMBER);
    assertThat(hand.state.screen()).isEqualTo("where");
  }

  @Test
  void optionBitsSwitchAtOnceAndASecondPressTakesThemBack() {
    Hand hand = teasel().press("3", "0", "2", "2", "4");
    assertThat(hand.shown).containsExactly("302 c q");
    assertThat(hand.survives("zone.bits", 2)).isEqualTo(new Value.Members(0b1010));
    hand.press("2");
    assertThat(hand.survives("zone.bits", 2)).isEqualTo(new Value.Members(0b1000));
  }

  @Test
  void hexadecimalDigitsComeThroughTheShiftKey() {
    Hand hand = teasel().press("9", "0", "0", "0", "round", "1", "round", "6", "7");
    assertThat(hand.survives("account", 0)).isEqualTo(new Value.Text("0AF7"));
    hand.press("9", "0", "0", "round", "9");
    assertThat(hand.refusal).contains(Refusal.NO_MEANING);
    assertThat(hand.shown).containsExactly("900 0AF7");
  }

  @Test
  void aSumOfOptionsIsTypedAsItsNumber() {
    Hand hand = teasel().press("6", "1", "1", "1", "3");
    assertThat(hand.shown).containsExactly("=A S T");
    assertThat(hand.survives("zone.mask", 11)).isEqualTo(new Value.Members(0b1101));
    hand.feed(new Input.TimePasses(30));
    assertThat(hand.state.screen()).isEqualTo("where");
  }

  @Test
  void specialNumbersAndTensOfSecondsAreTypedAsThePanelCounts() {
    Hand hand = teasel().press("4", "1", "0", "0", "0");
    assertThat(hand.survives("exit-time", 0)).isEqualTo(new Value.Whole(0));
    assertThat(hand.shown).containsExactly("411 04");
    hand.press("square", "4", "1", "0");
    assertThat(hand.shown).containsExactly("410 no");
  }

  @Test
  void titlesAreWordsByNumber() {
    Hand hand = teasel().press("5", "1", "0", "0", "0", "2", "0", "0", "6", "round");
    assertThat(hand.survives("group.title", 2)).isEqualTo(new Value.Words(List.of("SHOP", "YARD")));
  }

  @Test
  void aCodeIsAskedForTwice() {
    Hand hand = teasel().press("round", "code:new", "code:other");
    assertThat(hand.refusal).contains(Refusal.NOT_EQUAL);
    hand.press("code:new", "code:new");
    assertThat(hand.survives("service-code", 0)).isEqualTo(new Value.Secret("new"));
  }

  @Test
  void lampsLeaveTheTechnicianNearlyBlindAndDoNotJoin() {
    Hand hand = teasel();
    assertThat(hand.panel.display(hand.state, "row of lamps").lines()).containsExactly("service");
    assertThat(hand.panel.pressAndWait(hand.state, "row of lamps", "1").refusal())
        .contains(Refusal.OPEN_ELSEWHERE);
  }

  private static Hand yarrow() {
    return new Hand(TestPanels.YARROW, "talker")
        .feed(new Input.PowerLost())
        .feed(new Input.PowerBack())
        .feed(new Input.TimePasses(50))
        .feed(new Input.TimePasses(350))
        .press("yes and no together", "yes");
  }

  @Test
  void theWizardOpensOnlyWithinItsWindowAfterPowerUp() {
    Hand late = new Hand(TestPanels.YARROW, "talker").press("yes and no together");
    assertThat(late.refusal).contains(Refusal.NOT_NOW);
    assertThat(yarrow().shown).containsExactly("Sensor 1 is", "none?");
  }

  @Test
  void theWizardAsksOnlyWhatTheAnswersCallFor() {
    Hand hand = yarrow().press("yes");
    assertThat(hand.shown).containsExactly("Sensor 2 is", "none?");
    hand.press("more", "yes");
    assertThat(hand.state.screen()).isEqualTo("its job");
    hand.press("less", "yes", "1", "more", "more", "more", "1", "yes");
    assertThat(hand.holds("sensor.called", 2)).isEqualTo(new Value.Words(List.of("FRONT", "DOOR")));
    hand.press("1", "more", "yes");
    assertThat(hand.holds("sensor.extras", 2)).isEqualTo(new Value.Members(1));
  }

  @Test
  void aSensorIsHeardTwiceBeforeItIsLearnt() {
    Hand hand = yarrow().press("more", "yes", "yes", "yes", "yes");
    assertThat(hand.state.screen()).isEqualTo("its voice");
    hand.feed(new Input.TransmitterHeard("00A1B2", ""));
    assertThat(hand.holds("sensor.radio", 1)).isEqualTo(Value.nothing());
    hand.feed(new Input.TransmitterHeard("00A1B3", ""));
    assertThat(hand.state.screen()).isEqualTo("its voice");
    hand.feed(new Input.TransmitterHeard("00A1B3", ""));
    assertThat(hand.holds("sensor.radio", 1)).isEqualTo(new Value.Text("00A1B3"));
    assertThat(hand.shown).containsExactly("window right?", "00A1B3");
    assertThat(hand.survives("sensor.radio", 1)).isEqualTo(Value.nothing());
    hand.press("yes");
    assertThat(hand.survives("sensor.radio", 1)).isEqualTo(new Value.Text("00A1B3"));
  }

  @Test
  void theWizardEndsAfterTheLastRecordAndRestarts() {
    Hand hand = yarrow().press("yes", "yes", "yes", "yes", "yes", "yes");
    assertThat(hand.shown).containsExactly("Siren for 6 min");
    hand.press("more", "yes", "yes", "0", "4", "7", "1", "1", "2", "yes", "yes");
    assertThat(hand.left).contains(new Departure("contented", true, false, true));
    assertThat(hand.survives("siren", 0)).isEqualTo(new Value.Whole(9));
    assertThat(hand.survives("account", 0)).isEqualTo(new Value.Text("047112"));
    assertThat(hand.panel.restartTenths(hand.state, "talker")).isEqualTo(442);
    hand.press("yes");
    assertThat(hand.refusal).contains(Refusal.RESTARTING);
  }
}
