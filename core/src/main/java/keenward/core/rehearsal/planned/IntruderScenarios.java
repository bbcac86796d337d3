package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.CrossGroup;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.ZoneModel;

/** What intruders do. */
final class IntruderScenarios {

  private static final int SECONDS_BETWEEN_ROOMS = 8;

  private final Scene scene;
  private final SystemModel model;
  private final List<StandardScenario> found = new ArrayList<>();

  IntruderScenarios(Scene scene) {
    this.scene = scene;
    this.model = scene.model();
  }

  List<StandardScenario> scenarios() {
    List<Integer> openings =
        scene.zones(ZoneResponse.ENTRY_EXIT, ZoneResponse.PERIMETER).stream()
            .filter(scene::isArmable)
            .toList();
    scene.some("burglars", openings).forEach(this::through);
    pastTheDoors();
    swinger();
    for (int group = 0; group < model.crossGroups().size(); group++) {
      oneOfAPair(model.crossGroups().get(group));
    }
    lidByNight();
    return found;
  }

  private void add(String name, String reason, ScriptText script) {
    found.add(new StandardScenario(name, reason, script.toString()));
  }

  private void through(int opening) {
    ZoneModel zone = model.zones().get(opening);
    ScriptText script = scene.script();
    scene.closeUp(script);
    script.line("open " + script.zone(opening));
    for (int inside : scene.inside(zone.partition())) {
      script.later(SECONDS_BETWEEN_ROOMS);
      script.line("violate " + script.zone(inside) + " for 2 s");
    }
    add(zone.name() + ": a burglar comes in", "when it is first seen, heard and reported", script);
  }

  /** Through a wall, a roof or a window that nothing watches. */
  private void pastTheDoors() {
    Optional<Integer> inside =
        scene.zones(ZoneResponse.FOLLOWER).stream().filter(scene::isArmable).findFirst();
    if (inside.isPresent()) {
      ScriptText script = scene.script();
      scene.closeUp(script);
      script.line("violate " + script.zone(inside.get()) + " for 2 s");
      add(
          model.zones().get(inside.get()).name() + ": somebody inside who used no door",
          "a follower without an entry time behind it alarms at once",
          script);
    }
  }

  private void swinger() {
    for (int zone : scene.zones(ZoneResponse.INSTANT, ZoneResponse.FOLLOWER)) {
      int limit = model.zones().get(zone).swingerLimit();
      if (limit > 0 && limit < 10 && scene.isArmable(zone)) {
        ScriptText script = scene.script();
        scene.closeUp(script);
        for (int time = 0; time <= limit; time++) {
          script.line("violate " + script.zone(zone) + " for 2 s").later(120);
        }
        add(
            model.zones().get(zone).name() + ": the same zone again and again",
            "the swinger limit shuts it out, which costs protection too",
            script);
        return;
      }
    }
  }

  private void oneOfAPair(CrossGroup group) {
    if (group.zones().size() < 2 || !scene.isArmable(group.zones().getFirst())) {
      return;
    }
    int first = group.zones().getFirst();
    int second = group.zones().get(1);
    ScriptText script = scene.script();
    scene.closeUp(script);
    script.line("violate " + script.zone(first) + " for 2 s");
    script.later(Math.ceilDiv(group.windowTenths(), 10) + 60);
    script.line("violate " + script.zone(first) + " for 2 s").later(5);
    script.line("violate " + script.zone(second) + " for 2 s");
    add(
        model.zones().get(first).name()
            + " and "
            + model.zones().get(second).name()
            + ": one, then both",
        "of a cross-zone group two have to see something within the window",
        script);
  }

  private void lidByNight() {
    for (int zone : scene.zones(ZoneResponse.INSTANT, ZoneResponse.FOLLOWER, ZoneResponse.TAMPER)) {
      if (scene.isArmable(zone)) {
        ScriptText script = scene.script();
        scene.closeUp(script);
        script.line("tamper " + script.zone(zone));
        add(
            model.zones().get(zone).name() + ": lid opened by night",
            "a tamper while armed is an alarm",
            script);
        return;
      }
    }
  }
}
