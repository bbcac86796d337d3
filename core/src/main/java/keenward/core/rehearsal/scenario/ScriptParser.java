package keenward.core.rehearsal.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.rehearsal.SystemModel;

/** Reads scenario scripts; their grammar is in docs/reference/scenario-script.md. */
public final class ScriptParser {

  private static final int LONGEST_TEXT = 1 << 20;
  private static final int MOST_LINES = 20_000;

  private final Statements statements;
  private final Expectations expectations;
  private final ScriptClock clock = new ScriptClock();
  private final List<Script.Event> events = new ArrayList<>();
  private final List<Expectation> expected = new ArrayList<>();

  private ScriptParser(SystemModel model) {
    Names names = new Names(model);
    statements = new Statements(model, names, clock, events);
    expectations = new Expectations(names, clock);
  }

  /** Reads a script about a system. Every mistake is found in one go, a line at most one. */
  public static ParsedScript parse(String text, SystemModel model) {
    if (text.length() > LONGEST_TEXT) {
      return refused("a script of " + text.length() + " characters", "at most 1048576");
    }
    List<String> lines = lines(text);
    if (lines.size() > MOST_LINES) {
      return refused("a script of " + lines.size() + " lines", "at most " + MOST_LINES);
    }
    return new ScriptParser(model).read(lines);
  }

  private static ParsedScript refused(String what, String expected) {
    return new ParsedScript(Optional.empty(), List.of(new ScriptProblem(1, 1, what, expected)));
  }

  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>();
    int from = 0;
    while (from <= text.length()) {
      int to = text.indexOf('\n', from);
      int end = to < 0 ? text.length() : to;
      lines.add(text.substring(from, end));
      from = end + 1;
    }
    return lines;
  }

  private ParsedScript read(List<String> lines) {
    List<ScriptProblem> problems = new ArrayList<>();
    int number = 0;
    for (String text : lines) {
      number++;
      try {
        read(Line.of(text), number);
      } catch (Mistake mistake) {
        problems.add(new ScriptProblem(number, mistake.column, mistake.what, mistake.expected));
      }
    }
    if (!problems.isEmpty()) {
      return new ParsedScript(Optional.empty(), problems);
    }
    events.sort(Comparator.comparingInt(Script.Event::atTenths));
    int end = clock.nowTenths();
    for (Script.Event event : events) {
      end = Math.max(end, event.atTenths());
    }
    for (Expectation expectation : expected) {
      end = Math.max(end, expectation.atTenths());
    }
    return new ParsedScript(
        Optional.of(new Script(clock.startTenths(), events, expected, end)), List.of());
  }

  private void read(Line line, int number) {
    if (line.isEmpty()) {
      return;
    }
    if (line.take("start")) {
      clock.start(line);
      line.needEnd();
      return;
    }
    if (ScriptClock.isTime(line)) {
      clock.goTo(line);
    }
    clock.begin();
    if (line.take("expect")) {
      expected.add(expectations.read(line, number));
    } else {
      statements.read(line, number);
    }
    line.needEnd();
  }
}
