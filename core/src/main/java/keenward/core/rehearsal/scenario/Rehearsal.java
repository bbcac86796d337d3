package keenward.core.rehearsal.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import keenward.core.rehearsal.Engine;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.State;
import keenward.core.rehearsal.SystemModel;

/** Plays a script through a system. */
public final class Rehearsal {

  /**
   * How long a script runs on after the last moment that it speaks of, so that what it set going is
   * seen.
   */
  public static final int RUN_ON_TENTHS = 10 * TimeText.MINUTE;

  private final Engine engine;
  private final Script script;
  private final Wording wording;
  private final List<Row> rows = new ArrayList<>();
  private final TreeMap<Integer, State> states = new TreeMap<>();
  private final Reasons reasons = new Reasons(this::heard);
  private State state;
  private int now;

  private Rehearsal(SystemModel model, Script script) {
    engine = new Engine(model);
    this.script = script;
    wording = new Wording(model);
    state = engine.atRest(script.startTenths() % TimeText.DAY);
    states.put(0, state);
  }

  /**
   * What came of a rehearsal.
   *
   * @param timeline everything that happened
   * @param unmet the expectations that were not met
   */
  public record Result(Timeline timeline, List<Unmet> unmet) {

    public Result {
      unmet = List.copyOf(unmet);
    }
  }

  /** Plays a script; it starts with everything disarmed, shut and well. */
  public static Result run(SystemModel model, Script script) {
    return new Rehearsal(model, script).run();
  }

  private Result run() {
    for (Script.Event event : script.events()) {
      passTimeTo(event.atTenths());
      happens(event.input());
    }
    passTimeTo(script.endTenths() + RUN_ON_TENTHS);
    Timeline timeline = new Timeline(rows);
    Verdicts verdicts = new Verdicts(engine.model(), script, timeline, stateAt());
    return new Result(timeline, verdicts.unmet());
  }

  private Verdicts.StateAt stateAt() {
    return atTenths -> {
      Map.Entry<Integer, State> entry = states.floorEntry(atTenths);
      return entry == null ? state : entry.getValue();
    };
  }

  private void passTimeTo(int atTenths) {
    while (now < atTenths) {
      int step = Math.min(engine.nextDeadlineTenths(state), atTenths - now);
      Input input = new Input.Advance(step);
      reasons.begin(now, input);
      state = engine.apply(state, input, reasons);
      now += step;
      states.put(now, state);
    }
  }

  private void happens(Input input) {
    rows.add(
        new Row(
            script.startTenths() + now,
            RowKind.INPUT,
            wording.input(input),
            Optional.of(input),
            Optional.empty(),
            Optional.empty(),
            ""));
    reasons.begin(now, input);
    state = engine.apply(state, input, reasons);
    states.put(now, state);
  }

  private void heard(Output output, Reasons.Moment moment) {
    rows.add(
        new Row(
            script.startTenths() + moment.atTenths(),
            Wording.kind(output),
            wording.output(output),
            Optional.empty(),
            Optional.of(output),
            Optional.of(moment.because()),
            wording.reason(moment.because(), script.startTenths(), moment.atTenths())));
  }
}
