package keenward.core.rehearsal.scenario;

import java.util.List;
import java.util.function.IntFunction;
import keenward.core.plan.ArmingMode;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.SystemModel;

/** Reads what happens in a script. */
final class Statements {

  private static final List<String> WORDS =
      List.of(
          "open",
          "close",
          "violate",
          "restore",
          "press",
          "release",
          "tamper",
          "mend",
          "lose",
          "hear",
          "cell",
          "code",
          "wrong",
          "arm",
          "disarm",
          "bypass",
          "end",
          "isolate",
          "reset",
          "postpone",
          "clock",
          "power",
          "programming",
          "restart",
          "wait",
          "expect");
  private static final int BRIEF_PRESS = TimeText.SECOND;
  private static final int MOST_TIMES = 100;

  private final SystemModel model;
  private final Names names;
  private final ScriptClock clock;
  private final List<Script.Event> events;

  Statements(SystemModel model, Names names, ScriptClock clock, List<Script.Event> events) {
    this.model = model;
    this.names = names;
    this.clock = clock;
    this.events = events;
  }

  void read(Line line, int number) {
    Token word = line.takeAny("what happens, such as open, close, code or arm");
    switch (word.quoted() ? "" : word.text()) {
      case "open", "violate" ->
          lasting(line, number, names.zone(line), Input.ZoneOpened::new, Input.ZoneClosed::new);
      case "close", "restore", "release" -> add(number, new Input.ZoneClosed(names.zone(line)));
      case "press" -> press(line, number);
      case "tamper" ->
          lasting(line, number, names.zone(line), Input.LidOpened::new, Input.LidShut::new);
      case "mend" -> add(number, new Input.LidShut(names.zone(line)));
      case "lose" -> add(number, new Input.RadioLost(names.zone(line)));
      case "hear" -> add(number, new Input.RadioHeard(names.zone(line)));
      case "cell" -> {
        int zone = names.zone(line);
        add(number, new Input.Cell(zone, either(line, "low", "good")));
      }
      case "code" -> {
        int user = names.user(line);
        add(number, new Input.Code(user, names.keypadIfStated(line)));
      }
      case "wrong" -> wrongCode(line, number);
      case "arm" -> arm(line, number);
      case "disarm" -> disarm(line, number);
      case "bypass" -> {
        int zone = names.zone(line);
        int user = by(line);
        add(number, new Input.Bypass(user, names.keypadIfStated(line), zone));
      }
      case "isolate" -> {
        int zone = names.zone(line);
        add(number, new Input.Isolate(by(line), zone, true));
      }
      case "end" -> end(line, number);
      case "reset" -> {
        int user = by(line);
        add(number, new Input.Reset(user, names.keypadIfStated(line)));
      }
      case "postpone" -> {
        line.need("arming");
        int tenths = clock.length(line);
        int user = by(line);
        add(number, new Input.PostponeArming(user, names.keypadIfStated(line), tenths));
      }
      case "clock" -> setClock(line, number);
      case "power" -> power(line, number);
      case "programming" -> add(number, new Input.Programming(either(line, "open", "leave")));
      case "restart" -> add(number, new Input.Restart());
      case "wait" -> clock.pass(line);
      default ->
          throw new Mistake(
              word.column(),
              word.shown(),
              NearestName.find(word.text(), WORDS)
                  .map(near -> "what happens, perhaps " + near)
                  .orElse("what happens, such as open, close, code or arm"));
    }
  }

  private void add(int line, Input input) {
    events.add(new Script.Event(clock.nowTenths(), line, input));
  }

  /** Something that begins now and, where the line says how long it lasts, ends by itself. */
  private void lasting(
      Line line, int number, int zone, IntFunction<Input> begin, IntFunction<Input> end) {
    add(number, begin.apply(zone));
    if (line.take("for")) {
      int tenths = clock.length(line);
      events.add(new Script.Event(clock.nowTenths() + tenths, number, end.apply(zone)));
    }
  }

  /** A button is pressed as long as it takes, unless the line says how long. */
  private void press(Line line, int number) {
    int zone = names.zone(line);
    int tenths =
        line.take("for")
            ? clock.length(line)
            : Math.max(model.zones().get(zone).holdTenths(), BRIEF_PRESS);
    add(number, new Input.ZoneOpened(zone));
    events.add(new Script.Event(clock.nowTenths() + tenths, number, new Input.ZoneClosed(zone)));
  }

  private int by(Line line) {
    line.need("by");
    return names.user(line);
  }

  private static boolean either(Line line, String yes, String no) {
    if (line.take(yes)) {
      return true;
    }
    if (line.take(no)) {
      return false;
    }
    String expected = yes + " or " + no;
    Token token = line.takeAny(expected);
    throw new Mistake(token.column(), token.shown(), expected);
  }

  private void wrongCode(Line line, int number) {
    line.need("code");
    line.need("at");
    int keypad = names.keypad(line);
    int times = 1;
    if (!line.isEmpty()) {
      Token count = line.takeAny("how many times");
      if (!Names.isNumber(count.text())
          || Integer.parseInt(count.text()) < 1
          || Integer.parseInt(count.text()) > MOST_TIMES) {
        throw new Mistake(count.column(), count.shown(), "how many times, 1 to " + MOST_TIMES);
      }
      times = Integer.parseInt(count.text());
      line.need("times");
    }
    for (int time = 0; time < times; time++) {
      add(number, new Input.WrongCode(keypad));
    }
  }

  static ArmingMode mode(Line line) {
    Token token = line.takeAny("away, stay or night");
    for (ArmingMode mode : ArmingMode.values()) {
      if (token.is(mode.word())) {
        return mode;
      }
    }
    throw new Mistake(token.column(), token.shown(), "away, stay or night");
  }

  private void arm(Line line, int number) {
    ArmingMode mode = mode(line);
    boolean forced = line.take("forced");
    int partition = line.isNext("by") ? SystemModel.NONE : names.partition(line);
    int user = by(line);
    int keypad = names.keypadIfStated(line);
    forced |= line.take("forced");
    add(number, new Input.Arm(user, keypad, partition, mode, forced));
  }

  private void disarm(Line line, int number) {
    int partition = line.isNext("by") ? SystemModel.NONE : names.partition(line);
    int user = by(line);
    add(number, new Input.Disarm(user, names.keypadIfStated(line), partition));
  }

  private void end(Line line, int number) {
    boolean bypass = either(line, "bypass", "isolation");
    int zone = names.zone(line);
    int user = by(line);
    if (bypass) {
      add(number, new Input.EndBypass(user, names.keypadIfStated(line), zone));
    } else {
      add(number, new Input.Isolate(user, zone, false));
    }
  }

  private void setClock(Line line, int number) {
    boolean forward = either(line, "forward", "back");
    int column = line.column();
    int tenths = clock.length(line);
    if (tenths >= TimeText.DAY) {
      throw new Mistake(column, TimeText.length(tenths), "less than a day");
    }
    add(number, new Input.ClockSet(forward ? tenths : -tenths));
  }

  private void power(Line line, int number) {
    if (either(line, "mains", "battery")) {
      add(number, new Input.Mains(either(line, "on", "off")));
    } else {
      add(number, new Input.Battery(either(line, "low", "good")));
    }
  }
}
