package keenward.core.building.walking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Opening;
import keenward.core.plan.Person;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;

/**
 * The walks of a site that delays depend on: in by every entry door to the keypad, from the keypad
 * out, and at night from the bedrooms to the nearest keypad.
 *
 * @param walks entries, then exits, then night walks, each in the order of the plan
 * @param blocked walks for which there is no way as drawn, in words
 * @param notAssessed what the plan does not say
 */
public record SiteWalks(List<SiteWalk> walks, List<String> blocked, List<MissingFact> notAssessed) {

  public SiteWalks {
    walks = List.copyOf(walks);
    blocked = List.copyOf(blocked);
    notAssessed = List.copyOf(notAssessed);
  }

  /** The walks of a plan. */
  public static SiteWalks of(
      SitePlan plan, Settings settings, WalkingMap map, EntryWays ways, Sightings sightings) {
    return new Maker(plan, settings, map, sightings).make(ways);
  }

  /** A walk between any two places. */
  public static SiteWalks between(WalkingMap map, Sightings sightings, Place from, Place to) {
    return switch (map.search(from, to)) {
      case WalkingMap.Search.Found(WalkingRoute route) ->
          new SiteWalks(
              List.of(
                  new SiteWalk(
                      SiteWalk.Kind.ASKED,
                      Optional.empty(),
                      WalkTime.plain(route),
                      Optional.empty(),
                      sightings.onWalk(route))),
              List.of(),
              List.of());
      case WalkingMap.Search.Blocked(String why) ->
          new SiteWalks(List.of(), List.of(why), List.of());
      case WalkingMap.Search.Unknown(MissingFact missing) ->
          new SiteWalks(List.of(), List.of(), List.of(missing));
    };
  }

  private static final class Maker {
    private final SitePlan plan;
    private final Settings settings;
    private final WalkingMap map;
    private final Sightings sightings;
    private final List<SiteWalk> walks = new ArrayList<>();
    private final List<String> blocked = new ArrayList<>();
    private final List<MissingFact> notAssessed = new ArrayList<>();

    Maker(SitePlan plan, Settings settings, WalkingMap map, Sightings sightings) {
      this.plan = plan;
      this.settings = settings;
      this.map = map;
      this.sightings = sightings;
    }

    SiteWalks make(EntryWays ways) {
      notAssessed.addAll(ways.notKnown());
      ways.ways().forEach(this::enter);
      plan.people().forEach(person -> person.habits().forEach(habit -> leave(person, habit)));
      if (walks.stream().noneMatch(walk -> walk.kind() == SiteWalk.Kind.EXIT)) {
        List.copyOf(walks).forEach(this::leaveTheSameWay);
      }
      plan.floors().stream().map(Floor::rooms).flatMap(List::stream).forEach(this::wake);
      return new SiteWalks(
          walks, blocked.stream().distinct().toList(), notAssessed.stream().distinct().toList());
    }

    private void enter(EntryWay way) {
      for (Walk walk : way.walks()) {
        told(walk.drawn())
            .ifPresent(route ->
                walks.add(
                    new SiteWalk(
                        SiteWalk.Kind.ENTRY,
                        walk.habitual(),
                        WalkTime.in(route, walk.habitual()),
                        entryDelay(way.zone()),
                        sightings.onWalk(route))));
      }
    }

    private Optional<Settings.Resolved> entryDelay(Zone zone) {
      return settings.findEntryDelay(zone.entryDelay().orElse(1));
    }

    private void leave(Person person, Habit habit) {
      Optional<Opening> door =
          habit
              .through()
              .find()
              .flatMap(
                  name -> plan.openings().filter(each -> each.name().equals(name)).findFirst());
      if (habit.action() != HabitAction.ARM_AWAY || door.isEmpty()) {
        return;
      }
      habit
          .keypad()
          .find()
          .flatMap(plan::findDevice)
          .flatMap(keypad -> told(map.search(door, keypad)))
          .map(WalkingRoute::back)
          .ifPresent(route -> exit(route, Optional.of(new Walk.Habitual(person, habit))));
    }

    private void leaveTheSameWay(SiteWalk entry) {
      exit(entry.time().route().back(), Optional.empty());
    }

    private void exit(WalkingRoute route, Optional<Walk.Habitual> who) {
      walks.add(
          new SiteWalk(
              SiteWalk.Kind.EXIT,
              who,
              WalkTime.out(route, who),
              Optional.of(settings.get(Setting.EXIT_TIME)),
              sightings.onWalk(route)));
    }

    private void wake(Room room) {
      if (room.use().orNull() != RoomUse.BEDROOM) {
        return;
      }
      Optional<Place> bed = map.place(room.name());
      List<WalkingMap.Search> found =
          plan.devicesOf(DeviceKind.KEYPAD)
              .flatMap(keypad -> map.place(keypad).stream())
              .flatMap(keypad -> bed.map(from -> map.search(from, keypad)).stream())
              .toList();
      if (bed.isEmpty()) {
        notAssessed.add(
            new MissingFact(
                PlanPath.of("floors"),
                "the walk from '" + room.name() + "', which is not drawn",
                "outline: [[0, 0], [4, 0], [4, 3], [0, 3]]"));
      }
      found.stream()
          .flatMap(search -> search.find().stream())
          .min(Comparator.comparingDouble(WalkingRoute::metres))
          .ifPresentOrElse(
              route ->
                  walks.add(
                      new SiteWalk(
                          SiteWalk.Kind.NIGHT,
                          Optional.empty(),
                          WalkTime.plain(route),
                          Optional.empty(),
                          sightings.onWalk(route))),
              () -> found.stream().findFirst().ifPresent(this::told));
    }

    /** The walk; why there is none is noted. */
    private Optional<WalkingRoute> told(WalkingMap.Search search) {
      switch (search) {
        case WalkingMap.Search.Found ignored -> {}
        case WalkingMap.Search.Blocked(String why) -> blocked.add(why);
        case WalkingMap.Search.Unknown(MissingFact missing) -> notAssessed.add(missing);
      }
      return search.find();
    }
  }
}
