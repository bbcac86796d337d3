package keenward.core.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import keenward.core.plan.ZoneResponse;

/**
 * What must hold whatever happens. It watches from outside: it sees outputs and the public face of
 * a state, and keeps its own book of what was reported.
 */
final class Promises {

  private final SystemModel model;
  private final Map<Integer, Set<Integer>> reported = new HashMap<>();
  private final Map<Integer, Integer> again = new HashMap<>();
  private final Set<Integer> closed = new HashSet<>();
  private Tone tone = Tone.SILENT;
  private int burglaryTenths;

  Promises(SystemModel model) {
    this.model = model;
  }

  void check(Input input, State before, Outcome outcome) {
    int last = 0;
    int span = input instanceof Input.Advance(int tenths) ? tenths : 0;
    for (Outcome.Timed timed : outcome.outputs()) {
      assertThat(timed.afterTenths()).as("time runs forwards").isBetween(last, span);
      passTime(timed.afterTenths() - last);
      last = timed.afterTenths();
      see(timed.output());
    }
    passTime(span - last);
    State state = outcome.state();
    assertThat(state.tone()).as("sounder as told").isEqualTo(tone);
    for (int partition = 0; partition < model.partitions().size(); partition++) {
      assertThat(state.exitLeftTenths(partition))
          .as("exit time")
          .isBetween(0, model.timings().of(TimingSetting.EXIT_TIME));
      assertThat(state.entryLeftTenths(partition)).as("entry time").isBetween(0, 900);
      if (state.mode(partition).isEmpty()) {
        assertThat(state.exitLeftTenths(partition)).as("no exit time disarmed").isZero();
        assertThat(state.entryLeftTenths(partition)).as("no entry time disarmed").isZero();
      }
    }
    checkCommonArea(state);
    if (!before.isSuspended()) {
      checkDisarming(input, state);
      checkTwentyFourHour(input, before, state);
    }
    if (input instanceof Input.Advance) {
      assertThat(stillOpen(before)).as("time opens nothing").containsAll(stillOpen(state));
    }
  }

  /**
   * Somebody who may disarm everything, at no keypad that could be locked, disarms and silences
   * everything.
   */
  private void checkDisarming(Input input, State state) {
    boolean everything =
        input instanceof Input.Disarm(int user, int keypad, int partition)
            && keypad == SystemModel.NONE
            && partition == SystemModel.NONE
            && user >= 0
            && model.users().get(user).mayDisarm().containsAll(Set.of(0, 1));
    if (everything) {
      assertThat(state.tone()).as("disarming silences").isEqualTo(Tone.SILENT);
      for (int each = 0; each < model.partitions().size(); each++) {
        assertThat(state.mode(each)).as("disarming disarms").isEmpty();
      }
    }
  }

  /** A 24-hour zone alarms in every mode, unless somebody left it out. */
  private void checkTwentyFourHour(Input input, State before, State state) {
    if (input instanceof Input.ZoneOpened(int zone)
        && zone < model.zones().size()
        && model.zones().get(zone).response() == ZoneResponse.TWENTY_FOUR_HOUR
        && !before.isOpen(zone)
        && !state.isLeftOut(zone)) {
      assertThat(state.isReported(zone) || state.isReportPending(zone))
          .as("24-hour zone alarms")
          .isTrue();
    }
  }

  private Set<Integer> stillOpen(State state) {
    Set<Integer> open = new HashSet<>();
    for (int zone = 0; zone < model.zones().size(); zone++) {
      if (state.isOpen(zone)) {
        open.add(zone);
      }
    }
    return open;
  }

  /** Armed only with all that share it. */
  private void checkCommonArea(State state) {
    for (int common = 0; common < model.partitions().size(); common++) {
      if (state.mode(common).isPresent()) {
        for (int sharer : model.partitions().get(common).commonTo()) {
          assertThat(state.mode(sharer)).as("common area armed alone").isPresent();
        }
      }
    }
  }

  private void passTime(int tenths) {
    if (tone == Tone.BURGLARY) {
      burglaryTenths += tenths;
      assertThat(burglaryTenths)
          .as("burglary sounder stops within its time of the last alarm")
          .isLessThanOrEqualTo(model.timings().of(TimingSetting.SOUNDER_TIME));
    }
  }

  private void see(Output output) {
    switch (output) {
      case Output.Sounder(Tone next) -> {
        assertThat(next).as("a sounder only changes").isNotEqualTo(tone);
        tone = next;
        burglaryTenths = 0;
      }
      case Output.Signal signal -> see(signal);
      case Output.Display(int ignored, Notice notice, int subject, int tenths) -> {
        assertThat(tenths).isNotNegative();
        checkSubject(notice, subject);
        // A new alarm starts the sounder's time again, heard or not.
        if (notice == Notice.ALARM || notice == Notice.TAMPER || notice == Notice.CLOSE_DOOR) {
          burglaryTenths = 0;
        }
      }
      case Output.Refused(int ignored, Notice notice, int subject) -> checkSubject(notice, subject);
      case Output.Log(Notice notice, int subject, int tenths) -> {
        assertThat(tenths).isNotNegative();
        checkSubject(notice, subject);
      }
      case Output.NoEffect(int zone) -> assertThat(zone).isBetween(0, model.zones().size() - 1);
      case Output.Annunciation(int partition, Beep ignored, boolean alsoIgnored) ->
          assertThat(partition).isBetween(0, model.partitions().size() - 1);
      case Output.Strobe ignored -> {}
    }
  }

  private void checkSubject(Notice notice, int subject) {
    int size =
        switch (notice.subject()) {
          case ZONE -> model.zones().size();
          case PARTITION -> model.partitions().size();
          case USER -> model.users().size();
          case KEYPAD -> model.keypads().size();
          case SYSTEM -> 0;
        };
    assertThat(subject).as("subject of %s", notice).isBetween(-1, size - 1);
    assertThat(subject >= 0).as("subject of %s", notice).isEqualTo(size > 0);
  }

  /** A restore only for what was reported, an opening only after a closing, and neither twice. */
  private void see(Output.Signal signal) {
    int code = signal.code();
    boolean openClose = (code >= 401 && code <= 409 && code != 406) || code == 441;
    if (openClose) {
      if (signal.qualifier() == 3) {
        closed.add(signal.partition());
        newPeriod(signal.partition());
      } else {
        assertThat(closed.remove(signal.partition())).as("opening after closing").isTrue();
      }
      return;
    }
    boolean paired = (code < 400 && code != 378 && code != 374) || (code >= 570 && code < 580);
    if (paired && code != 121 && code != 305 && code != 147) {
      Set<Integer> book = reported.computeIfAbsent(code, ignored -> new HashSet<>());
      if (signal.qualifier() == 1) {
        boolean right =
            book.add(signal.zone()) || isFree(code, signal.zone()) || mayAlarmAnew(signal.zone());
        assertThat(right).as("%s reported twice", signal).isTrue();
      } else {
        assertThat(book.remove(signal.zone())).as("%s restored unreported", signal).isTrue();
      }
    }
  }

  /** A zone that stayed open since its alarm may alarm anew once its partition is armed anew. */
  private void newPeriod(int partition) {
    for (int zone = 0; zone < model.zones().size(); zone++) {
      if (model.zones().get(zone).partition() == partition) {
        again.merge(zone, 1, Integer::sum);
      }
    }
  }

  private boolean mayAlarmAnew(int zone) {
    return again.merge(zone, -1, Integer::sum) >= 0;
  }

  /**
   * An alarm of a zone that reports no restore comes without one in between; a bypass has several
   * reasons.
   */
  private boolean isFree(int code, int zone) {
    return (code >= 570 && code <= 573)
        || (zone >= 0 && !model.zones().get(zone).traits().contains(ZoneTrait.RESTORE_REPORTED));
  }
}
