package keenward.core.rehearsal;

import java.util.ArrayList;
import java.util.List;

/**
 * The alarm system: what one input does to one state. Deterministic and total: every input has an
 * outcome, one that names something outside the system is refused. What it does is in
 * docs/methods/rehearsal.md, behaviour by behaviour.
 *
 * <p>Deadlines up to and including a moment are met before an input of that moment, so let time
 * pass first.
 */
public final class Engine {

  /** The time to the next deadline when none runs. */
  public static final int NO_DEADLINE = Integer.MAX_VALUE;

  private static final int DAY_TENTHS = 864_000;

  private final SystemModel model;
  private final Tables tables;

  /** An engine for one system. */
  public Engine(SystemModel model) {
    this.model = model;
    this.tables = new Tables(model);
  }

  /** The system. */
  public SystemModel model() {
    return model;
  }

  /**
   * Everything disarmed, shut and well.
   *
   * @param timeOfDayTenths the time of day, in tenths of a second since midnight; it only matters
   *     for arming by itself
   */
  public State atRest(int timeOfDayTenths) {
    if (timeOfDayTenths < 0 || timeOfDayTenths >= DAY_TENTHS) {
      throw new IllegalArgumentException("not a time of day: " + timeOfDayTenths + " tenths");
    }
    State blank =
        new State(
            tables.layout, new long[tables.layout.flagWords()], new int[tables.layout.registers()]);
    Draft draft = new Draft(tables, blank, Listener.NONE);
    AutomaticArming.schedule(draft, timeOfDayTenths);
    return draft.done();
  }

  /** Works off an input and collects what the system does. */
  public Outcome apply(State state, Input input) {
    List<Outcome.Timed> outputs = new ArrayList<>();
    State next =
        apply(state, input, (after, output) -> outputs.add(new Outcome.Timed(after, output)));
    return new Outcome(next, outputs);
  }

  /**
   * Works off an input and tells the listener what the system does; an {@link Explainer} is also
   * told why.
   */
  public State apply(State state, Input input, Listener listener) {
    Draft draft = new Draft(tables, state, listener);
    if (isPartOfSystem(input)) {
      work(draft, input);
    } else {
      draft.emit(
          Behaviour.UNKNOWN_REFUSED,
          SystemModel.NONE,
          0,
          new Output.Refused(SystemModel.NONE, Notice.NOT_PART_OF_SYSTEM, SystemModel.NONE));
    }
    return draft.done();
  }

  /**
   * Time to the next deadline of a state, in tenths of a second; {@link #NO_DEADLINE} when none
   * runs.
   */
  public int nextDeadlineTenths(State state) {
    return state.nextDeadlineTenths();
  }

  private void work(Draft draft, Input input) {
    switch (input) {
      case Input.Advance(int tenths) -> Deadlines.advance(draft, tenths);
      case Input.ZoneOpened(int zone) -> Zones.opened(draft, zone);
      case Input.ZoneClosed(int zone) -> Zones.closed(draft, zone);
      case Input.LidOpened(int zone) -> Tampers.lidOpened(draft, zone);
      case Input.LidShut(int zone) -> Tampers.lidShut(draft, zone);
      case Input.RadioLost(int zone) -> Radio.lost(draft, zone);
      case Input.RadioHeard(int zone) -> Radio.heard(draft, zone);
      case Input.Cell(int zone, boolean low) -> Radio.cell(draft, zone, low);
      case Input.Code(int user, int keypad) -> Access.code(draft, user, keypad);
      case Input.WrongCode(int keypad) -> Access.wrongCode(draft, keypad);
      case Input.Arm arm -> Arming.ordered(draft, arm);
      case Input.Disarm disarm -> Disarming.ordered(draft, disarm);
      case Input.Bypass(int user, int keypad, int zone) ->
          Bypassing.ordered(draft, user, keypad, zone);
      case Input.EndBypass(int user, int keypad, int zone) ->
          Bypassing.endOrdered(draft, user, keypad, zone);
      case Input.Isolate(int user, int zone, boolean out) ->
          Bypassing.isolation(draft, user, zone, out);
      case Input.Reset(int user, int keypad) -> Resetting.ordered(draft, user, keypad);
      case Input.PostponeArming(int user, int keypad, int tenths) ->
          AutomaticArming.postponed(draft, user, keypad, tenths);
      case Input.ClockSet(int tenths) -> AutomaticArming.clockSet(draft, tenths);
      case Input.Mains(boolean present) -> Supplies.mains(draft, present);
      case Input.Battery(boolean low) -> Supplies.battery(draft, low);
      case Input.Programming(boolean open) -> Suspension.programming(draft, open);
      case Input.Restart() -> Suspension.restart(draft);
    }
  }

  private boolean isPartOfSystem(Input input) {
    return switch (input) {
      case Input.ZoneOpened(int zone) -> tables.hasZone(zone);
      case Input.ZoneClosed(int zone) -> tables.hasZone(zone);
      case Input.LidOpened(int zone) -> tables.hasZone(zone);
      case Input.LidShut(int zone) -> tables.hasZone(zone);
      case Input.RadioLost(int zone) -> tables.hasZone(zone);
      case Input.RadioHeard(int zone) -> tables.hasZone(zone);
      case Input.Cell(int zone, boolean ignored) -> tables.hasZone(zone);
      case Input.Code(int user, int keypad) -> isKnown(user, keypad);
      case Input.WrongCode(int keypad) -> tables.hasKeypad(keypad);
      case Input.Arm(int user, int keypad, int partition, var ignored, var alsoIgnored) ->
          isKnown(user, keypad) && isKnownPartition(partition);
      case Input.Disarm(int user, int keypad, int partition) ->
          isKnown(user, keypad) && isKnownPartition(partition);
      case Input.Bypass(int user, int keypad, int zone) ->
          isKnown(user, keypad) && tables.hasZone(zone);
      case Input.EndBypass(int user, int keypad, int zone) ->
          isKnown(user, keypad) && tables.hasZone(zone);
      case Input.Isolate(int user, int zone, boolean ignored) ->
          tables.hasUser(user) && tables.hasZone(zone);
      case Input.Reset(int user, int keypad) -> isKnown(user, keypad);
      case Input.PostponeArming(int user, int keypad, int ignored) -> isKnown(user, keypad);
      case Input.Advance ignored -> true;
      case Input.ClockSet ignored -> true;
      case Input.Mains ignored -> true;
      case Input.Battery ignored -> true;
      case Input.Programming ignored -> true;
      case Input.Restart ignored -> true;
    };
  }

  private boolean isKnown(int user, int keypad) {
    return tables.hasUser(user) && (keypad == SystemModel.NONE || tables.hasKeypad(keypad));
  }

  private boolean isKnownPartition(int partition) {
    return partition == SystemModel.NONE || tables.hasPartition(partition);
  }
}
