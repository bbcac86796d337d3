package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.rehearsal.ZoneTrait;

/** What honest people do, and do wrong. */
final class HonestScenarios {

  private static final int SECOND = 10;

  private final Scene scene;
  private final SystemModel model;
  private final List<StandardScenario> found = new ArrayList<>();

  HonestScenarios(Scene scene) {
    this.scene = scene;
    this.model = scene.model();
  }

  List<StandardScenario> scenarios() {
    for (int partition : scene.ownPartitions()) {
      if (scene.exitDoor(partition).isPresent()) {
        nobodyLeaves(partition);
      }
    }
    List<Integer> doors =
        scene.zones(ZoneResponse.ENTRY_EXIT).stream().filter(scene::isArmable).toList();
    for (int door : scene.some("ways in and out", doors)) {
      leftOpen(door);
      inTime(door);
      tooSlow(door);
    }
    openWindow();
    bypassForgotten();
    for (int area = 0; area < model.partitions().size(); area++) {
      if (!model.partitions().get(area).commonTo().isEmpty()) {
        firstComesBack(area);
      }
    }
    return found;
  }

  private void add(String name, String reason, ScriptText script) {
    found.add(new StandardScenario(name, reason, script.toString()));
  }

  private String name(int zone) {
    return model.zones().get(zone).name();
  }

  private String area(int partition) {
    return model.partitions().get(partition).name();
  }

  private void leftOpen(int door) {
    int area = model.zones().get(door).partition();
    List<Integer> sharers = model.partitions().get(area).commonTo();
    ScriptText script = scene.script().at(Scene.CLOSE_UP);
    for (int partition : sharers.isEmpty() ? List.of(area) : sharers) {
      scene.arm(script, "away", partition);
    }
    script.later(10).line("open " + script.zone(door));
    add(
        name(door) + ": left open on leaving",
        "the exit error: a sound that calls people back, and an alarm if they don't come",
        script);
  }

  private void nobodyLeaves(int partition) {
    ScriptText script = scene.script().at(Scene.CLOSE_UP);
    scene.arm(script, "away", partition);
    int exit = scene.seconds(TimingSetting.EXIT_TIME);
    script.later(exit + 60);
    for (int zone : scene.inside(partition)) {
      script.later(5).line("violate " + script.zone(zone) + " for 2 s");
    }
    add(
        area(partition) + ": armed away, but nobody leaves",
        "whether somebody still inside sets it off",
        script);
  }

  private int delaySeconds(int door) {
    return Math.ceilDiv(model.zones().get(door).delays().awayTenths(), SECOND);
  }

  private void inTime(int door) {
    ScriptText script = scene.script();
    scene.closeUp(script);
    script.line("open " + script.zone(door) + " for 3 s");
    script.later(Math.max(delaySeconds(door) - 5, 0));
    scene.code(script, door);
    add(name(door) + ": code in the last seconds", "the entry time is long enough", script);
  }

  private void tooSlow(int door) {
    ScriptText script = scene.script();
    scene.closeUp(script);
    script.line("open " + script.zone(door) + " for 3 s");
    script.later(delaySeconds(door) + 10);
    scene.code(script, door);
    add(
        name(door) + ": code too late",
        "whether a slow hand sends the police: the abort window decides",
        script);
  }

  private void openWindow() {
    Optional<Integer> window =
        scene.zones(ZoneResponse.PERIMETER).stream().filter(scene::isArmable).findFirst();
    if (window.isEmpty()) {
      return;
    }
    ZoneModel zone = model.zones().get(window.get());
    ScriptText script = scene.script().at(Scene.CLOSE_UP - 60);
    script.line("open " + script.zone(window.get()));
    script.at(Scene.CLOSE_UP);
    for (int partition : scene.ownPartitions()) {
      scene.arm(script, "away", partition);
    }
    add(
        zone.name() + ": open when arming",
        "an open zone refuses arming, or is left out where that is allowed",
        script);
  }

  private void bypassForgotten() {
    Optional<Integer> window =
        scene.zones(ZoneResponse.PERIMETER).stream()
            .filter(scene::isArmable)
            .filter(zone -> model.zones().get(zone).traits().contains(ZoneTrait.BYPASSABLE))
            .findFirst();
    if (window.isEmpty()) {
      return;
    }
    int zone = window.get();
    ScriptText script = scene.script().at(Scene.CLOSE_UP - 60);
    scene
        .order(model.zones().get(zone).partition())
        .ifPresent(order ->
            script.line(
                "bypass "
                    + script.zone(zone)
                    + " by "
                    + script.user(order.user())
                    + script.at(order)));
    scene.closeUp(script);
    script.line("open " + script.zone(zone) + " for 5 s");
    script.later(600);
    for (int partition : scene.ownPartitions()) {
      scene.disarm(script, partition);
    }
    add(
        name(zone) + ": left out for a night",
        "what is left out is blind, and comes back with disarming",
        script);
  }

  private void firstComesBack(int common) {
    int first = model.partitions().get(common).commonTo().getFirst();
    ScriptText script = scene.script();
    scene.closeUp(script);
    scene.disarm(script, first);
    boolean seen = false;
    for (int zone :
        scene.zones(ZoneResponse.FOLLOWER, ZoneResponse.INSTANT, ZoneResponse.PERIMETER)) {
      if (model.zones().get(zone).partition() == common) {
        script.later(5).line("violate " + script.zone(zone) + " for 2 s");
        seen = true;
      }
    }
    if (seen && scene.isArmable(model.partitions().get(common).commonTo())) {
      add(
          area(common) + ": the first one comes back",
          "the common area is disarmed with the first of those who share it; the others stay armed",
          script);
    }
  }
}
