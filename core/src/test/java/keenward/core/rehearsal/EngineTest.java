package keenward.core.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

class EngineTest {

  private static final int RUNS = Integer.getInteger("keenward.runs", 300);
  private static final int LENGTH = 400;

  @Test
  void keepsItsPromisesForRandomInputs() {
    for (int seed = 0; seed < RUNS; seed++) {
      Random random = new Random(seed);
      SystemModel base = seed % 2 == 0 ? Systems.ofTheCases() : Systems.armingByItself();
      SystemModel model = Systems.varied(base, random);
      Engine engine = new Engine(model);
      RandomInputs inputs = new RandomInputs(model, random);
      Promises promises = new Promises(model);
      State state = engine.atRest(8 * 36_000);
      List<Input> soFar = new ArrayList<>();
      for (int step = 0; step < LENGTH; step++) {
        Input input = inputs.next();
        soFar.add(input);
        try {
          Outcome outcome = engine.apply(state, input);
          promises.check(input, state, outcome);
          assertThat(engine.apply(state, input)).isEqualTo(outcome);
          state = outcome.state();
        } catch (RuntimeException | AssertionError broken) {
          throw new AssertionError(
              "seed " + seed + ", step " + step + ": " + broken.getMessage() + "\n" + soFar,
              broken);
        }
      }
    }
  }

  @Test
  void leavesAStateThatNothingChangesAsItIs() {
    Engine engine = new Engine(Systems.ofTheCases());
    State rest = engine.atRest(0);
    assertThat(engine.apply(rest, new Input.Advance(1000)).state()).isSameAs(rest);
    assertThat(engine.apply(rest, new Input.ZoneClosed(0)).state()).isSameAs(rest);
  }

  @Test
  void reachesEqualStatesByDifferentWays() {
    Engine engine = new Engine(Systems.ofTheCases());
    State early = armedAway(engine, engine.atRest(0));
    State late = armedAway(engine, engine.apply(engine.atRest(0), new Input.Advance(777)).state());
    assertThat(early).isEqualTo(late).hasSameHashCodeAs(late);
    State other = engine.apply(late, new Input.ZoneOpened(0)).state();
    assertThat(other).isNotEqualTo(late);
  }

  @Test
  void passesTimeInOneGoAsInManySteps() {
    for (int seed = 0; seed < RUNS; seed++) {
      Random random = new Random(seed);
      SystemModel model = Systems.varied(Systems.armingByItself(), random);
      Engine engine = new Engine(model);
      RandomInputs inputs = new RandomInputs(model, random);
      State state = engine.atRest(0);
      for (int step = 0; step < 60; step++) {
        state = engine.apply(state, inputs.next()).state();
      }
      int whole = 1 + random.nextInt(5000);
      int part = random.nextInt(whole);
      State once = engine.apply(state, new Input.Advance(whole)).state();
      State twice = engine.apply(state, new Input.Advance(part)).state();
      twice = engine.apply(twice, new Input.Advance(whole - part)).state();
      assertThat(twice).as("seed %d", seed).isEqualTo(once);
    }
  }

  @Test
  void refusesWhatIsNotPartOfTheSystem() { // SYS-1
    Engine engine = new Engine(Systems.ofTheCases());
    State rest = engine.atRest(0);
    List<Input> strange =
        List.of(
            new Input.ZoneOpened(99),
            new Input.ZoneClosed(-1),
            new Input.Code(99, 0),
            new Input.Code(0, 99),
            new Input.WrongCode(SystemModel.NONE),
            new Input.Arm(0, 0, 99, ArmingMode.AWAY, false));
    for (Input input : strange) {
      Outcome outcome = engine.apply(rest, input);
      assertThat(outcome.state()).isSameAs(rest);
      assertThat(outcome.outputs())
          .extracting(Outcome.Timed::output)
          .containsExactly(
              new Output.Refused(SystemModel.NONE, Notice.NOT_PART_OF_SYSTEM, SystemModel.NONE));
    }
  }

  @Test
  void worksBeyondSixtyFourZones() {
    List<ZoneModel> zones = new ArrayList<>();
    for (int number = 1; number <= 200; number++) {
      zones.add(ZoneModel.of(number, "zone " + number, ZoneResponse.TWENTY_FOUR_HOUR, 133));
    }
    Engine engine =
        new Engine(
            new SystemModel(
                List.of(PartitionModel.of(1, "all")),
                zones,
                List.of(),
                List.of(),
                List.of(),
                Timings.standard(),
                RehearsalOptions.standard()));
    State state = engine.apply(engine.atRest(0), new Input.ZoneOpened(130)).state();
    assertThat(state.isOpen(130)).isTrue();
    assertThat(state.isOpen(66)).isFalse();
    assertThat(state.isOpen(2)).isFalse();
    assertThat(state.isReported(130)).isTrue();
  }

  private static State armedAway(Engine engine, State from) {
    Input arm = new Input.Arm(0, 0, SystemModel.NONE, ArmingMode.AWAY, false);
    State state = engine.apply(from, arm).state();
    state = engine.apply(state, new Input.ZoneOpened(0)).state();
    state = engine.apply(state, new Input.ZoneClosed(0)).state();
    return engine.apply(state, new Input.Advance(1000)).state();
  }
}
