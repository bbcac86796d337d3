package keenward.core.rehearsal.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.core.rehearsal.Behaviour;
import keenward.core.rehearsal.Engine;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.Notice;
import keenward.core.rehearsal.Outcome;
import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.RandomInputs;
import keenward.core.rehearsal.State;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Systems;
import org.junit.jupiter.api.Test;

class ExplanationsTest {

  @Test
  void changeNothingAndAreThereForEveryOutput() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      SystemModel model = Systems.varied(Systems.armingByItself(), random);
      Engine engine = new Engine(model);
      RandomInputs inputs = new RandomInputs(model, random);
      Wording wording = new Wording(model);
      List<Output> told = new ArrayList<>();
      List<Reasons.Moment> moments = new ArrayList<>();
      Reasons reasons =
          new Reasons((output, moment) -> {
            told.add(output);
            moments.add(moment);
          });
      State plain = engine.atRest(0);
      State explained = plain;
      int now = 0;
      for (int step = 0; step < 200; step++) {
        Input input = inputs.next();
        told.clear();
        moments.clear();
        reasons.begin(now, input);
        explained = engine.apply(explained, input, reasons);
        Outcome outcome = engine.apply(plain, input);
        plain = outcome.state();
        assertThat(explained).as("seed %d", seed).isEqualTo(plain);
        assertThat(told)
            .as("seed %d", seed)
            .isEqualTo(outcome.outputs().stream().map(Outcome.Timed::output).toList());
        for (Reasons.Moment moment : moments) {
          assertThat(moment.because().steps()).as("seed %d: %s", seed, input).isNotEmpty();
          String reason = wording.reason(moment.because(), 0, moment.atTenths());
          assertThat(reason).startsWith("because ").doesNotContain("{");
        }
        for (Output output : told) {
          assertThat(wording.output(output)).as("seed %d", seed).isNotBlank().doesNotContain("{");
        }
        now += input instanceof Input.Advance(int tenths) ? tenths : 0;
      }
    }
  }

  @Test
  void haveWordsForEveryBehaviourAndNotice() {
    for (Behaviour behaviour : Behaviour.values()) {
      assertThat(
              List.of(
                  behaviour.event(),
                  behaviour.condition(),
                  behaviour.effect(),
                  behaviour.source(),
                  behaviour.because()))
          .as(behaviour.id())
          .noneMatch(String::isBlank);
    }
    for (Notice notice : Notice.values()) {
      assertThat(notice.phrase()).isNotBlank();
    }
  }
}
