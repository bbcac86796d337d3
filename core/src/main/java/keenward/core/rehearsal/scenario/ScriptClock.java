package keenward.core.rehearsal.scenario;

import keenward.core.quantities.Parsed;
import keenward.core.quantities.Span;

/** Reads the times of a script and keeps where it has got to. */
final class ScriptClock {

  static final String TIME = "a time such as 07:58:00, day 2 00:10:00 or t+20";

  /** Longer than any test of an alarm system takes. */
  private static final int LONGEST = 31 * TimeText.DAY;

  private int start;
  private boolean started;
  private int now;

  int startTenths() {
    return start;
  }

  int nowTenths() {
    return now;
  }

  /** Whether a word is the beginning of a time. */
  static boolean isTime(Line line) {
    if (line.isEmpty()) {
      return false;
    }
    Token token = line.peek(TIME);
    String text = token.text();
    boolean clock = !text.isEmpty() && isDigit(text.charAt(0)) && text.indexOf(':') > 0;
    return !token.quoted() && (clock || text.startsWith("t+") || text.equals("day"));
  }

  /** The script starts at a time of day. */
  void start(Line line) {
    Token token = line.peek(TIME);
    int tenths = clock(line);
    if (started) {
      throw new Mistake(
          token.column(), "the script has started already", "the start before everything else");
    }
    started = true;
    start = tenths;
  }

  /** Something without a time starts the script, at midnight unless it was said otherwise. */
  void begin() {
    started = true;
  }

  /** Goes on to a time. */
  void goTo(Line line) {
    int column = line.column();
    int time = time(line);
    if (time < now) {
      throw new Mistake(
          column,
          TimeText.clock(start + time) + " is earlier than " + TimeText.clock(start + now),
          "a time that is not earlier than the line before; the next day is day 2");
    }
    now = time;
  }

  /** Lets a length of time pass. */
  void pass(Line line) {
    int column = line.column();
    int length = length(line);
    if (length > LONGEST - now) {
      throw new Mistake(column, "a very long script", "at most 31 days in all");
    }
    now += length;
  }

  /** A time, since the start of the script; the first one on a clock starts it. */
  int time(Line line) {
    Token token = line.peek(TIME);
    if (token.text().startsWith("t+") && !token.quoted()) {
      started = true;
      line.takeAny(TIME);
      return seconds(token);
    }
    int clock = clock(line);
    if (!started) {
      started = true;
      start = clock;
    }
    if (clock < start) {
      throw new Mistake(
          token.column(),
          TimeText.clock(clock) + " is before the start at " + TimeText.clock(start),
          "a time after the start; the next day is day 2");
    }
    return clock - start;
  }

  private static int seconds(Token token) {
    Parsed<Span> span = Span.parse(token.text().substring(2) + " s");
    return tenths(token, span, "t+ and seconds, such as t+20");
  }

  /** A length of time, such as {@code 3 s}. */
  int length(Line line) {
    String expected = "a length of time such as 3 s, 2 min or 1 h";
    Token number = line.takeAny(expected);
    String text = number.text();
    boolean unitFollows = !text.isEmpty() && isDigit(text.charAt(text.length() - 1));
    if (unitFollows) {
      text += " " + line.takeAny(expected).text();
    }
    return tenths(number, Span.parse(text), expected);
  }

  private static int tenths(Token token, Parsed<Span> span, String expected) {
    Span value = span.value();
    if (value == null) {
      throw new Mistake(token.column(), token.shown(), expected);
    }
    if (value.milliseconds() % 100 != 0) {
      throw new Mistake(token.column(), token.shown(), "a time to a tenth of a second");
    }
    if (value.milliseconds() / 100 > LONGEST) {
      throw new Mistake(token.column(), token.shown(), "at most 31 days");
    }
    return (int) (value.milliseconds() / 100);
  }

  /** A time on a clock, since midnight of the first day. */
  private static int clock(Line line) {
    int day = 1;
    if (line.take("day")) {
      Token token = line.takeAny("the number of a day, 1 to 31");
      if (!Names.isNumber(token.text())
          || Integer.parseInt(token.text()) < 1
          || Integer.parseInt(token.text()) > 31) {
        throw new Mistake(token.column(), token.shown(), "the number of a day, 1 to 31");
      }
      day = Integer.parseInt(token.text());
    }
    Token token = line.takeAny(TIME);
    String[] parts = token.text().split(":", -1);
    if (token.quoted() || parts.length < 2 || parts.length > 3) {
      throw new Mistake(token.column(), token.shown(), TIME);
    }
    int tenths = 0;
    if (parts.length == 3) {
      int point = parts[2].indexOf('.');
      if (point >= 0) {
        tenths = number(token, parts[2].substring(point + 1), 1, 9);
        parts[2] = parts[2].substring(0, point);
      }
      tenths += TimeText.SECOND * number(token, parts[2], 2, 59);
    }
    return (day - 1) * TimeText.DAY
        + TimeText.HOUR * number(token, parts[0], 2, 23)
        + TimeText.MINUTE * number(token, parts[1], 2, 59)
        + tenths;
  }

  private static int number(Token token, String digits, int width, int most) {
    if (!Names.isNumber(digits) || digits.length() > width || Integer.parseInt(digits) > most) {
      throw new Mistake(token.column(), token.shown(), TIME);
    }
    return Integer.parseInt(digits);
  }

  private static boolean isDigit(char letter) {
    return letter >= '0' && letter <= '9';
  }
}
