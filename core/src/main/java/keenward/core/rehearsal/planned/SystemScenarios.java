package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.ZoneTrait;

/** What befalls the system itself. */
final class SystemScenarios {

  private static final int MORNING = 10 * 3600;
  private static final int MOST_WRONG_CODES = 100;

  /** A script ends within 31 days. */
  private static final int LONGEST_SECONDS = 30 * 24 * 3600;

  private final Scene scene;
  private final SystemModel model;

  SystemScenarios(Scene scene) {
    this.scene = scene;
    this.model = scene.model();
  }

  List<StandardScenario> scenarios() {
    List<StandardScenario> found = new ArrayList<>();
    mains(found);
    radio(found);
    lockOut(found);
    if (!model.zones().isEmpty()) {
      ScriptText script = scene.script().at(MORNING);
      script.line("tamper " + script.zone(0) + " for 1 min");
      found.add(
          new StandardScenario(
              model.zones().getFirst().name() + ": lid opened by day",
              "a tamper while disarmed is trouble, not alarm, unless the panel chooses otherwise",
              script.toString()));
    }
    return found;
  }

  private void mains(List<StandardScenario> found) {
    int delay = scene.seconds(TimingSetting.MAINS_REPORT_DELAY);
    if (delay < LONGEST_SECONDS) {
      ScriptText script = scene.script().at(MORNING);
      script.line("power mains off").later(delay + 600).line("power mains on");
      found.add(
          new StandardScenario(
              "mains fails for longer than the delay",
              "the report waits, and its restore follows only if it was sent",
              script.toString()));
    }
  }

  private void radio(List<StandardScenario> found) {
    for (int zone = 0; zone < model.zones().size(); zone++) {
      if (model.zones().get(zone).traits().contains(ZoneTrait.RADIO)) {
        ScriptText script = scene.script().at(MORNING);
        int supervision = scene.seconds(TimingSetting.RADIO_SUPERVISION);
        script.line("lose " + script.zone(zone));
        if (supervision < LONGEST_SECONDS) {
          script.later(supervision + 600).line("hear " + script.zone(zone));
        }
        found.add(
            new StandardScenario(
                model.zones().get(zone).name() + ": not heard any more",
                "how long a dead or jammed radio device stays unnoticed",
                script.toString()));
        return;
      }
    }
  }

  private void lockOut(List<StandardScenario> found) {
    int limit = model.timings().of(TimingSetting.WRONG_CODE_LIMIT);
    for (int keypad = 0; keypad < model.keypads().size(); keypad++) {
      KeypadModel each = model.keypads().get(keypad);
      ScriptText script = scene.script().at(MORNING);
      String at = script.at(new ScriptText.Order(0, keypad));
      if (limit > 0
          && limit <= MOST_WRONG_CODES
          && each.kind() == KeypadModel.Kind.KEYPAD
          && !at.isEmpty()) {
        script.line("wrong code" + at + " " + limit + " times").later(10);
        if (!model.users().isEmpty()) {
          script.line("code " + script.user(0) + at);
        }
        found.add(
            new StandardScenario(
                each.name() + ": wrong codes until it stops listening",
                "the lock-out keeps honest people out as well",
                script.toString()));
        return;
      }
    }
  }
}
