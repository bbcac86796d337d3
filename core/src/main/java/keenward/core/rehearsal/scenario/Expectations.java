package keenward.core.rehearsal.scenario;

import java.util.Optional;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Tone;

/** Reads what a script expects. */
final class Expectations {

  private static final String EXPECTED =
      "what is expected, such as signal 1134, sounder burglary, strobe on, shows \"text\", "
          + "or a partition and armed away";
  private static final int EVENT_DIGITS = 4;

  private final Names names;
  private final ScriptClock clock;

  Expectations(Names names, ScriptClock clock) {
    this.names = names;
    this.clock = clock;
  }

  Expectation read(Line line, int number) {
    int at = ScriptClock.isTime(line) ? clock.time(line) : clock.nowTenths();
    if (line.take("signal")) {
      return new Expectation.Signalled(number, at, pattern(line));
    }
    if (line.take("no")) {
      if (line.take("other")) {
        line.need("signal");
        return new Expectation.NoOtherSignal(number);
      }
      line.need("signal");
      return new Expectation.NotSignalled(
          number, line.isEmpty() ? Optional.empty() : Optional.of(pattern(line)));
    }
    if (line.take("sounder")) {
      return new Expectation.Sounds(number, at, tone(line));
    }
    if (line.take("strobe")) {
      return new Expectation.Flashes(number, at, on(line));
    }
    if (line.take("shows")) {
      return new Expectation.Shown(number, at, text(line));
    }
    if (line.take("never")) {
      return new Expectation.NeverShown(number, text(line));
    }
    line.peek(EXPECTED);
    int partition = names.partition(line);
    if (line.take("disarmed")) {
      return new Expectation.InMode(number, at, partition, Optional.empty());
    }
    line.need("armed");
    return new Expectation.InMode(number, at, partition, Optional.of(Statements.mode(line)));
  }

  private static String text(Line line) {
    return line.takeAny("a text in quotes").text();
  }

  private static boolean on(Line line) {
    if (line.take("on")) {
      return true;
    }
    line.need("off");
    return false;
  }

  private static Tone tone(Line line) {
    String expected = "silent, medical, burglary, \"carbon monoxide\" or fire";
    Token token = line.takeAny(expected);
    for (Tone tone : Tone.values()) {
      if (tone.word().equals(token.text())) {
        return tone;
      }
    }
    throw new Mistake(token.column(), token.shown(), expected);
  }

  private SignalPattern pattern(Line line) {
    String expected = "qualifier and event code, four digits such as 1134";
    Token token = line.takeAny(expected);
    if (token.text().length() != EVENT_DIGITS || !Names.isNumber(token.text())) {
      throw new Mistake(token.column(), token.shown(), expected);
    }
    int event = Integer.parseInt(token.text());
    int zone = SystemModel.NONE;
    int user = SystemModel.NONE;
    int partition = SystemModel.NONE;
    while (!line.isEmpty()) {
      if (line.isNext("zone")) {
        zone = names.zone(line);
      } else if (line.isNext("user")) {
        user = names.user(line);
      } else if (line.isNext("partition")) {
        partition = names.partition(line);
      } else {
        Token other = line.takeAny("zone, user or partition");
        throw new Mistake(other.column(), other.shown(), "zone, user or partition");
      }
    }
    return new SignalPattern(event / 1000, event % 1000, zone, user, partition);
  }
}
