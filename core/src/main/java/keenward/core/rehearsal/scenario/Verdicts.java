package keenward.core.rehearsal.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.rehearsal.Output;
import keenward.core.rehearsal.State;
import keenward.core.rehearsal.SystemModel;

/** Compares what a script expects with what happened. */
final class Verdicts {

  private final SystemModel model;
  private final Script script;
  private final Timeline timeline;
  private final StateAt states;
  private final List<Unmet> unmet = new ArrayList<>();
  private final Set<Integer> expectedRows = new HashSet<>();

  /** The state of the system at the end of a moment. */
  @FunctionalInterface
  interface StateAt {
    State get(int atTenths);
  }

  Verdicts(SystemModel model, Script script, Timeline timeline, StateAt states) {
    this.model = model;
    this.script = script;
    this.timeline = timeline;
    this.states = states;
  }

  List<Unmet> unmet() {
    for (Expectation expectation : script.expectations()) {
      judge(expectation);
    }
    // Only now is it known which signals the other lines expect.
    for (Expectation expectation : script.expectations()) {
      if (expectation instanceof Expectation.NoOtherSignal(int line)) {
        judgeOthers(line);
      }
    }
    return unmet;
  }

  private void judge(Expectation expectation) {
    switch (expectation) {
      case Expectation.Signalled(int line, int at, SignalPattern signal) ->
          judgeSignal(line, at, signal);
      case Expectation.NotSignalled(int line, Optional<SignalPattern> signal) ->
          judgeNoSignal(line, signal);
      case Expectation.NoOtherSignal ignored -> {}
      case Expectation.Sounds(int line, int at, var tone) -> {
        var found = states.get(at).tone();
        if (found != tone) {
          fail(line, "sounder " + tone.word() + at(at), "it is " + found.word());
        }
      }
      case Expectation.Flashes(int line, int at, boolean on) -> {
        if (states.get(at).isFlashing() != on) {
          fail(line, "strobe " + (on ? "on" : "off") + at(at), "it is " + (on ? "off" : "on"));
        }
      }
      case Expectation.InMode(int line, int at, int partition, Optional<ArmingMode> mode) -> {
        Optional<ArmingMode> found = states.get(at).mode(partition);
        if (!found.equals(mode)) {
          String name = model.partitions().get(partition).name();
          fail(line, name + " " + words(mode) + at(at), "it is " + words(found));
        }
      }
      case Expectation.Shown(int line, int at, String text) -> judgeShown(line, at, text);
      case Expectation.NeverShown(int line, String text) -> {
        for (Row row : timeline.rows()) {
          if (row.what().contains(text)) {
            fail(line, "never \"" + text + "\"", row.clock() + " " + row.what());
          }
        }
      }
    }
  }

  private void fail(int line, String expected, String found) {
    unmet.add(new Unmet(line, expected, found));
  }

  private String at(int atTenths) {
    return " at " + TimeText.clock(script.startTenths() + atTenths);
  }

  private static String words(Optional<ArmingMode> mode) {
    return mode.map(each -> "armed " + each.word()).orElse("disarmed");
  }

  private void judgeSignal(int line, int at, SignalPattern wanted) {
    List<String> others = new ArrayList<>();
    for (int index = 0; index < timeline.rows().size(); index++) {
      Row row = timeline.rows().get(index);
      if (isSignal(row)) {
        boolean now = row.atTenths() == script.startTenths() + at;
        if (now && fits(row, wanted) && expectedRows.add(index)) {
          return;
        }
        if (now || fits(row, wanted)) {
          others.add(row.clock() + " " + row.what());
        }
      }
    }
    fail(
        line,
        "signal " + wanted.qualifier() + wanted.code() + at(at),
        others.isEmpty() ? "no such signal left" : "signals: " + String.join(", ", others));
  }

  private void judgeNoSignal(int line, Optional<SignalPattern> unwanted) {
    for (Row row : timeline.rows()) {
      if (isSignal(row) && (unwanted.isEmpty() || fits(row, unwanted.get()))) {
        fail(line, "no such signal", row.clock() + " " + row.what());
      }
    }
  }

  private void judgeOthers(int line) {
    for (int index = 0; index < timeline.rows().size(); index++) {
      Row row = timeline.rows().get(index);
      if (isSignal(row) && !expectedRows.contains(index)) {
        fail(line, "no other signal", row.clock() + " " + row.what());
      }
    }
  }

  private static boolean isSignal(Row row) {
    return row.kind() == RowKind.SIGNAL;
  }

  private static boolean fits(Row row, SignalPattern wanted) {
    return row.output().orElse(null) instanceof Output.Signal signal && wanted.fits(signal);
  }

  private void judgeShown(int line, int at, String text) {
    List<String> others = new ArrayList<>();
    for (Row row : timeline.rows()) {
      boolean now = row.atTenths() == script.startTenths() + at;
      if (now && row.what().contains(text)) {
        return;
      }
      if (now || row.what().contains(text)) {
        others.add(row.clock() + " " + row.what());
      }
    }
    fail(
        line,
        "\"" + text + "\"" + at(at),
        others.isEmpty() ? "nothing like it happened" : "rows: " + String.join(", ", others));
  }
}
