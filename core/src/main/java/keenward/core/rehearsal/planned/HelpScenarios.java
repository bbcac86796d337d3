package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.UserModel;

/**
 * Calls for help, fire, gas and plant. On site such tests need the monitoring centre's agreement;
 * here they don't.
 */
final class HelpScenarios {

  private static final int MORNING = 10 * 3600;
  private static final int NIGHT = 3 * 3600;

  private final Scene scene;
  private final SystemModel model;
  private final List<StandardScenario> found = new ArrayList<>();

  HelpScenarios(Scene scene) {
    this.scene = scene;
    this.model = scene.model();
  }

  List<StandardScenario> scenarios() {
    for (int zone : scene.some("calls under threat", scene.zones(ZoneResponse.HOLD_UP))) {
      press(
          zone,
          "pressed under threat",
          "who notices: the centre, and nobody on site if it is silent");
    }
    for (int zone : scene.some("calls for medical help", scene.zones(ZoneResponse.MEDICAL))) {
      press(zone, "pressed for help", "its own tone and its own signal");
    }
    scene.zones(ZoneResponse.FIRE).stream().findFirst().ifPresent(this::fire);
    scene.zones(ZoneResponse.CARBON_MONOXIDE).stream().findFirst().ifPresent(this::gas);
    for (int zone : scene.some("limits of plant", scene.zones(ZoneResponse.TECHNICAL))) {
      plant(zone);
    }
    scene.zones(ZoneResponse.TWENTY_FOUR_HOUR).stream().findFirst().ifPresent(this::byDay);
    duress();
    return found;
  }

  private void add(int zone, String what, String reason, ScriptText script) {
    found.add(
        new StandardScenario(
            model.zones().get(zone).name() + ": " + what, reason, script.toString()));
  }

  private void press(int zone, String what, String reason) {
    ScriptText script = scene.script().at(MORNING);
    script.line("press " + script.zone(zone));
    script.later(30);
    scene.code(script, zone);
    add(zone, what, reason, script);
  }

  private void fire(int zone) {
    ScriptText script = scene.script().at(NIGHT);
    // Twice, for a panel that wants to be sure.
    script.line("violate " + script.zone(zone)).later(30).line("violate " + script.zone(zone));
    script.later(60);
    scene.code(script, zone);
    script.later(240).line("restore " + script.zone(zone)).later(10);
    scene
        .order(model.zones().get(zone).partition())
        .ifPresent(
            order -> script.line("reset by " + script.user(order.user()) + script.at(order)));
    add(
        zone,
        "fire by night",
        "fire is heard above everything, is never held back, and stays until it is reset",
        script);
  }

  private void gas(int zone) {
    ScriptText script = scene.script().at(NIGHT);
    script.line("violate " + script.zone(zone)).later(30);
    scene.code(script, zone);
    script.later(600).line("restore " + script.zone(zone));
    add(zone, "carbon monoxide by night", "silencing does not make the gas go away", script);
  }

  private void plant(int zone) {
    ScriptText script = scene.script().at(NIGHT);
    script.line("violate " + script.zone(zone) + " for 30 min");
    add(zone, "passes its limit", "a signal and a display, no sounder", script);
  }

  private void byDay(int zone) {
    ScriptText script = scene.script().at(MORNING);
    script.line("violate " + script.zone(zone)).later(20);
    scene.code(script, zone);
    script.later(60).line("restore " + script.zone(zone));
    add(zone, "by day", "it is live armed or not", script);
  }

  private void duress() {
    for (int user = 0; user < model.users().size(); user++) {
      UserModel each = model.users().get(user);
      if (each.duress()) {
        ScriptText script = scene.script();
        scene.closeUp(script);
        scene.zones(ZoneResponse.ENTRY_EXIT).stream()
            .findFirst()
            .ifPresent(door -> script.line("open " + script.zone(door) + " for 3 s"));
        script.later(10).line("disarm by " + script.user(user));
        found.add(
            new StandardScenario(
                each.name() + ": disarmed under threat",
                "all looks as usual on site; the centre knows",
                script.toString()));
        return;
      }
    }
  }
}
