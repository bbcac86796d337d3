package keenward.core.dialogue.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Value;
import org.junit.jupiter.api.Test;

class InterpreterTest {
  private final Interpreter interpreter = new Interpreter(SmallPanel.description());

  private Transition run(Interpreter machine, State from, String... keys) {
    Transition transition =
        new Transition(
            from,
            machine.display(from, SmallPanel.TEXT),
            List.of(),
            java.util.Optional.empty(),
            java.util.Optional.empty(),
            java.util.Optional.empty());
    for (String key : keys) {
      transition = machine.pressAndWait(transition.state(), SmallPanel.TEXT, key);
    }
    return transition;
  }

  private State start() {
    return interpreter.start(interpreter.layout().initial());
  }

  private State top() {
    return run(interpreter, start(), "hold ok", "code:factory").state();
  }

  private Value value(State state, String field, int record) {
    return state.working().get(interpreter.layout().slot(field, record));
  }

  @Test
  void theRightCodeOpensProgrammingAndAWrongOneGoesBack() {
    assertThat(top().screen()).isEqualTo("top");
    Transition wrong = run(interpreter, start(), "hold ok", "code:guess");
    assertThat(wrong.state().screen()).isEqualTo("ready");
    assertThat(wrong.refusal()).contains(Refusal.NOT_EQUAL);
    assertThat(interpreter.programmingOpen(wrong.state())).isFalse();
  }

  @Test
  void typedDigitsAreStoredOnConfirmAndShownMeanwhile() {
    Transition typed = run(interpreter, top(), "down", "ok", "4", "5");
    assertThat(typed.display().lines()).containsExactly("Delay", "45");
    assertThat(value(typed.state(), "delay", 0)).isEqualTo(new Value.Whole(30));
    Transition stored = run(interpreter, typed.state(), "ok");
    assertThat(value(stored.state(), "delay", 0)).isEqualTo(new Value.Whole(45));
    assertThat(stored.stored())
        .containsExactly(
            new Stored(
                interpreter.layout().slot("delay", 0),
                new Value.Whole(30),
                new Value.Whole(45),
                false));
    assertThat(stored.state().committed().get(interpreter.layout().slot("delay", 0)))
        .isEqualTo(new Value.Whole(30));
  }

  @Test
  void aNumberOffItsStepIsRefusedAndASpecialIsTaken() {
    Transition offStep = run(interpreter, top(), "down", "ok", "4", "4", "ok");
    assertThat(offStep.refusal()).contains(Refusal.OUT_OF_RANGE);
    assertThat(offStep.state().screen()).isEqualTo("delay");
    assertThat(offStep.state().typing()).isEqualTo(Typing.EMPTY);
    Transition special = run(interpreter, top(), "down", "ok", "0", "ok");
    assertThat(value(special.state(), "delay", 0)).isEqualTo(new Value.Whole(0));
  }

  @Test
  void confirmingNothingSkipsUnchanged() {
    Transition skipped = run(interpreter, top(), "down", "ok", "ok");
    assertThat(skipped.state().screen()).isEqualTo("top");
    assertThat(skipped.stored()).isEmpty();
  }

  @Test
  void hexadecimalDigitsComeThroughAShiftKeyAndAreAskedTwice() {
    State account = run(interpreter, top(), "down", "down", "ok").state();
    Transition once = run(interpreter, account, "0", "*", "1", "*", "2", "7");
    assertThat(once.state().screen()).isEqualTo("account again");
    Transition twice = run(interpreter, once.state(), "0", "*", "1", "*", "2", "7");
    assertThat(value(twice.state(), "account", 0)).isEqualTo(new Value.Text("0AB7"));
    assertThat(twice.state().screen()).isEqualTo("top");
    Transition otherwise = run(interpreter, once.state(), "0", "0", "0", "0");
    assertThat(otherwise.refusal()).contains(Refusal.NOT_EQUAL);
    assertThat(otherwise.state().screen()).isEqualTo("account");
    assertThat(value(otherwise.state(), "account", 0)).isEqualTo(new Value.Text("0000"));
  }

  @Test
  void promptsDependOnEarlierAnswers() {
    assertThat(run(interpreter, top(), "ok", "1", "ok").state().screen()).isEqualTo("zone number");
    assertThat(run(interpreter, top(), "ok", "1", "down", "ok").state().screen())
        .isEqualTo("groups");
  }

  @Test
  void scrollingStopsAtTheEndWhereItDoesNotWrap() {
    Transition end = run(interpreter, top(), "ok", "1", "down", "down", "down");
    assertThat(end.refusal()).contains(Refusal.AT_THE_END);
    assertThat(end.display().lines()).containsExactly("Z01 is", "radio");
  }

  @Test
  void optionsSwitchAndStoreOnConfirm() {
    Transition switched = run(interpreter, top(), "ok", "1", "down", "ok", "1", "3");
    assertThat(switched.display().lines()).containsExactly("Groups 3");
    assertThat(value(switched.state(), "zone.groups", 1)).isEqualTo(new Value.Members(1));
    assertThat(value(run(interpreter, switched.state(), "ok").state(), "zone.groups", 1))
        .isEqualTo(new Value.Members(4));
  }

  @Test
  void multiTapCyclesLettersAndAPauseOrAKeyEndsOne() {
    State name = run(interpreter, top(), "ok", "1", "down", "ok", "ok").state();
    Transition tapped = run(interpreter, name, "2", "2", "3", "#", "3", "3");
    assertThat(tapped.display().lines()).containsExactly("BDE");
    State paused = interpreter.apply(tapped.state(), new Input.TimePasses(15)).state();
    assertThat(run(interpreter, paused, "3").display().lines()).containsExactly("BDED");
    assertThat(run(interpreter, tapped.state(), "3").display().lines()).containsExactly("BD3");
  }

  @Test
  void changingTheKindClearsTheName() {
    State named = run(interpreter, top(), "ok", "1", "down", "ok", "ok", "2", "ok").state();
    assertThat(value(named, "zone.name", 1)).isEqualTo(new Value.Text("A"));
    Transition changed = run(interpreter, named, "1", "down", "ok");
    assertThat(value(changed.state(), "zone.name", 1)).isEqualTo(new Value.Text(""));
    assertThat(changed.stored()).hasSize(2);
    assertThat(changed.stored().get(1).sideEffect()).isTrue();
  }

  @Test
  void aTransmitterIsLearntWithItsInputAndRefusedWhenKnown() {
    State listening = run(interpreter, top(), "ok", "1", "down", "down", "ok", "ok", "ok").state();
    assertThat(listening.screen()).isEqualTo("listen");
    Transition learnt = interpreter.apply(listening, new Input.TransmitterHeard("4711", "clamp"));
    assertThat(value(learnt.state(), "zone.unit", 1)).isEqualTo(new Value.Text("4711"));
    assertThat(value(learnt.state(), "zone.part", 1)).isEqualTo(new Value.Word("clamp"));
    State second = run(interpreter, learnt.state(), "2", "down", "down", "ok", "ok", "ok").state();
    Transition again = interpreter.apply(second, new Input.TransmitterHeard("4711", "clamp"));
    assertThat(again.refusal()).contains(Refusal.KNOWN_ALREADY);
    assertThat(again.display().lines()).containsExactly("Known as Z1");
    assertThat(again.stored()).isEmpty();
    Transition otherInput = interpreter.apply(second, new Input.TransmitterHeard("4711", "magnet"));
    assertThat(value(otherInput.state(), "zone.unit", 2)).isEqualTo(new Value.Text("4711"));
  }

  @Test
  void listeningEndsAfterItsTimeAndIdleDoesNotRunMeanwhile() {
    State listening = run(interpreter, top(), "ok", "1", "down", "down", "ok", "ok", "ok").state();
    assertThat(interpreter.apply(listening, new Input.TimePasses(890)).state().screen())
        .isEqualTo("listen");
    assertThat(interpreter.apply(listening, new Input.TimePasses(900)).state().screen())
        .isEqualTo("name");
  }

  @Test
  void idleDropsOutAndLosesWhatWasNotCommitted() {
    State edited = run(interpreter, top(), "down", "ok", "4", "5", "ok").state();
    Transition waited = interpreter.apply(edited, new Input.TimePasses(596));
    assertThat(waited.left().map(Departure::way)).contains("idle");
    assertThat(waited.state().screen()).isEqualTo("ready");
    assertThat(value(waited.state(), "delay", 0)).isEqualTo(new Value.Whole(30));
    assertThat(interpreter.apply(edited, new Input.TimePasses(595)).left()).isEmpty();
  }

  @Test
  void idleMayKeepEvenWhatWasBeingTyped() {
    Interpreter keeping = new Interpreter(SmallPanel.description(false, Leaving.Saves.TYPED_TOO));
    State typed =
        run(
                keeping,
                keeping.start(keeping.layout().initial()),
                "hold ok",
                "code:factory",
                "down",
                "ok",
                "4",
                "5")
            .state();
    State after = keeping.apply(typed, new Input.TimePasses(600)).state();
    assertThat(after.committed().get(keeping.layout().slot("delay", 0)))
        .isEqualTo(new Value.Whole(45));
  }

  @Test
  void aFieldIsCommittedAtOnceWhereThePanelKeepsAtOnce() {
    Interpreter atOnce = new Interpreter(SmallPanel.description(true, Leaving.Saves.NOTHING));
    State stored =
        run(
                atOnce,
                atOnce.start(atOnce.layout().initial()),
                "hold ok",
                "code:factory",
                "down",
                "ok",
                "4",
                "5",
                "ok")
            .state();
    State after = atOnce.apply(stored, new Input.PowerLost()).state();
    assertThat(after.committed().get(atOnce.layout().slot("delay", 0)))
        .isEqualTo(new Value.Whole(45));
  }

  @Test
  void leavingSavesRestartsAndLocksAsDescribed() {
    State edited = run(interpreter, top(), "down", "ok", "4", "5", "ok").state();
    Transition saved = run(interpreter, edited, "up", "ok");
    assertThat(saved.left()).contains(new Departure("saving", true, false, true));
    assertThat(value(saved.state(), "delay", 0)).isEqualTo(new Value.Whole(45));
    assertThat(run(interpreter, saved.state(), "hold ok").refusal()).contains(Refusal.RESTARTING);
    assertThat(interpreter.restartTenths(saved.state(), SmallPanel.TEXT)).isEqualTo(196);
    Transition slammed = run(interpreter, edited, "back", "hold ok", "code:factory");
    assertThat(slammed.state().locked()).isTrue();
    assertThat(slammed.refusal()).contains(Refusal.LOCKED);
  }

  @Test
  void powerLossLosesWhatWasNotCommittedAndThePanelIsDeafAfterwards() {
    State edited = run(interpreter, top(), "down", "ok", "4", "5", "ok").state();
    Transition lost = interpreter.apply(edited, new Input.PowerLost());
    assertThat(lost.state().working()).isEqualTo(interpreter.layout().initial());
    assertThat(run(interpreter, lost.state(), "ok").refusal()).contains(Refusal.NO_POWER);
    State back = interpreter.apply(lost.state(), new Input.PowerBack()).state();
    assertThat(run(interpreter, back, "hold ok").refusal()).contains(Refusal.RESTARTING);
    State later = interpreter.apply(back, new Input.TimePasses(100)).state();
    assertThat(run(interpreter, later, "hold ok").state().screen()).isEqualTo("code");
  }

  @Test
  void aKeyPressedBeforeTheLagIsOverIsLost() {
    State first = interpreter.apply(top(), new Input.Press(SmallPanel.TEXT, "down")).state();
    Transition second = interpreter.apply(first, new Input.Press(SmallPanel.TEXT, "down"));
    assertThat(second.refusal()).contains(Refusal.TOO_SOON);
    assertThat(second.state()).isEqualTo(first);
  }

  @Test
  void aKeypadThatDoesNotMirrorCannotJoinASession() {
    Transition other = interpreter.pressAndWait(top(), SmallPanel.LAMPS, "ok");
    assertThat(other.refusal()).contains(Refusal.OPEN_ELSEWHERE);
    assertThat(other.display().lines()).containsExactly("open");
    assertThat(interpreter.pressAndWait(top(), SmallPanel.LAMPS, "down").refusal())
        .contains(Refusal.NOT_ON_THIS_KEYPAD);
  }

  @Test
  void anUnknownValueIsAskedForOnlyWhereItDecides() {
    State unknown = interpreter.start(interpreter.layout().unknown());
    Transition code = run(interpreter, unknown, "hold ok", "code:factory");
    assertThat(code.needs()).contains(interpreter.layout().slot("code", 0));
    State open =
        run(
                interpreter,
                interpreter.assume(
                    code.state(),
                    interpreter.layout().slot("code", 0),
                    new Value.Secret("factory")),
                "code:factory")
            .state();
    Transition delay = run(interpreter, open, "down", "ok");
    assertThat(delay.display().unknown()).containsExactly(interpreter.layout().slot("delay", 0));
    assertThat(run(interpreter, delay.state(), "4", "5", "ok").needs()).isEmpty();
    Transition kind = run(interpreter, open, "ok", "1", "down");
    assertThat(kind.needs()).contains(interpreter.layout().slot("zone.kind", 1));
    assertThat(interpreter.completions(kind.needs().orElseThrow(), 64)).hasSize(3);
    State narrowed =
        interpreter.assume(
            kind.state(),
            interpreter.layout().slot("zone.kind", 1),
            new Value.Unknown(Set.of(new Value.Word("unused"))));
    assertThat(run(interpreter, narrowed, "ok").state().screen()).isEqualTo("groups");
  }

  @Test
  void nothingThatHappensIsThrownAndTheSameInputsGiveTheSameState() {
    for (long seed = 1; seed <= 300; seed++) {
      State first = start();
      State second = start();
      Random random = new Random(seed);
      for (int step = 0; step < 200; step++) {
        Input input = input(random);
        Transition transition = interpreter.apply(first, input);
        first = transition.state();
        second = interpreter.apply(second, input).state();
        assertThat(first).as("seed %d step %d %s", seed, step, input).isEqualTo(second);
        assertThat(first.hashCode()).isEqualTo(second.hashCode());
        assertThat(transition.needs()).isEmpty();
        if (!interpreter.programmingOpen(first)) {
          assertThat(first.working())
              .as("seed %d step %d", seed, step)
              .isEqualTo(first.committed());
        }
      }
    }
  }

  @Test
  void timeInOnePieceIsTimeInMany() {
    for (long seed = 1; seed <= 300; seed++) {
      Random random = new Random(seed);
      State state = start();
      for (int step = 0; step < 60; step++) {
        state = interpreter.apply(state, input(random)).state();
        int whole = random.nextInt(1, 1500);
        int part = random.nextInt(0, whole);
        State atOnce = interpreter.apply(state, new Input.TimePasses(whole)).state();
        State inParts =
            interpreter
                .apply(
                    interpreter.apply(state, new Input.TimePasses(part)).state(),
                    new Input.TimePasses(whole - part))
                .state();
        assertThat(inParts).as("seed %d step %d", seed, step).isEqualTo(atOnce);
      }
    }
  }

  private static Input input(Random random) {
    List<String> keys =
        List.of(
            "0",
            "1",
            "2",
            "3",
            "4",
            "5",
            "ok",
            "ok",
            "ok",
            "back",
            "up",
            "down",
            "*",
            "#",
            "hold ok",
            "code:factory",
            "code:factory");
    return switch (random.nextInt(12)) {
      case 0 ->
          new Input.TransmitterHeard(
              "471" + random.nextInt(3), random.nextBoolean() ? "clamp" : "lid");
      case 1 -> random.nextInt(8) == 0 ? new Input.PowerLost() : new Input.PowerBack();
      case 2 -> new Input.TimePasses(random.nextInt(300));
      case 3, 4 -> new Input.TimePasses(5);
      default -> new Input.Press(SmallPanel.TEXT, keys.get(random.nextInt(keys.size())));
    };
  }
}
