package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.description.PlanRecords;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.Monitoring;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.Worded;
import keenward.core.quantities.Span;

/** Looks facts up in a site plan. */
final class PlanAnswers {
  private final SitePlan plan;
  private final Settings settings;
  private final List<Device> keypads;

  PlanAnswers(SitePlan plan) {
    this.plan = plan;
    this.settings = Settings.of(plan, Map.of());
    this.keypads = plan.devicesOf(DeviceKind.KEYPAD).toList();
  }

  /** Numbers of the records that the plan has of a kind, each with its place. */
  Map<Integer, PlanPath> records(PlanRecords records) {
    Map<Integer, PlanPath> numbers = new LinkedHashMap<>();
    switch (records) {
      case ZONES -> plan.zones().forEach(zone -> numbers.put(zone.number(), zone.path()));
      case PARTITIONS ->
          plan.partitions()
              .forEach(partition ->
                  numbers.put(partition.number(), PlanPath.of("partitions", partition.name())));
      case USERS ->
          plan.users()
              .forEach(user -> numbers.put(user.number(), PlanPath.of("users", user.number())));
      case ENTRY_DELAYS ->
          settings.all().stream()
              .filter(each -> each.setting() == Setting.ENTRY_DELAY && wanted(each))
              .forEach(each -> numbers.put(each.index(), each.path()));
      case KEYPADS -> {
        for (int index = 0; index < keypads.size(); index++) {
          numbers.put(index + 1, PlanPath.of("devices", keypads.get(index).name()));
        }
      }
    }
    return numbers;
  }

  /** What the plan says about a fact; {@code record} is 0 for a fact of the whole system. */
  Fact<PlanAnswer> answer(PlanFact fact, int record) {
    if (fact.records().isEmpty()) {
      return fact.path().startsWith("monitoring.") ? monitoring(fact.path()) : setting(fact.path());
    }
    return switch (fact.records().get()) {
      case ZONES -> zone(fact.path(), record);
      case PARTITIONS -> partition(fact.path(), record);
      case USERS -> user(fact.path(), record);
      case KEYPADS -> keypad(fact.path(), record);
      case ENTRY_DELAYS ->
          settings
              .findEntryDelay(record)
              .filter(PlanAnswers::wanted)
              .map(PlanAnswers::resolved)
              .orElse(Fact.missing());
    };
  }

  private Fact<PlanAnswer> zone(String path, int number) {
    return plan.findZone(number)
        .map(zone -> ZoneAnswers.of(plan, zone, path))
        .orElse(Fact.missing());
  }

  private Fact<PlanAnswer> partition(String path, int number) {
    for (Partition partition : plan.partitions()) {
      if (partition.number() == number) {
        PlanPath place = PlanPath.of("partitions", partition.name());
        return switch (path) {
          case "partition.in use" -> yesNo(place, true);
          case "partition.name" ->
              plan.hasPartitions() ? text(place, partition.name()) : Fact.missing();
          case "partition.common to" ->
              plan.hasPartitions()
                  ? words(place.then("common to"), numbers(plan, partition.commonTo()))
                  : Fact.missing();
          default -> throw new IllegalArgumentException(path);
        };
      }
    }
    return Fact.missing();
  }

  private Fact<PlanAnswer> user(String path, int number) {
    for (User user : plan.users()) {
      if (user.number() == number) {
        PlanPath place = PlanPath.of("users", number);
        return switch (path) {
          case "user.in use" -> yesNo(place, true);
          case "user.name" -> text(place.then("name"), user.name());
          case "user.role" -> word(place.then("role"), user.role());
          case "user.partitions" ->
              words(place.then("partitions"), numbers(plan, user.partitions()));
          case "user.may bypass" -> yesNo(place.then("may bypass"), user.mayBypass());
          case "user.code" -> Fact.of(new PlanAnswer(place, new Content.Code("user " + number)));
          default -> throw new IllegalArgumentException(path);
        };
      }
    }
    return Fact.missing();
  }

  private Fact<PlanAnswer> keypad(String path, int number) {
    if (number < 1 || number > keypads.size()) {
      return Fact.missing();
    }
    String name = keypads.get(number - 1).name();
    PlanPath place = PlanPath.of("devices", name);
    return switch (path) {
      case "keypad.name" -> text(place, name);
      case "keypad.partitions" -> {
        if (plan.partitions().stream().allMatch(each -> each.keypads().isEmpty())) {
          yield Fact.missing();
        }
        List<String> served = new ArrayList<>();
        for (Partition partition : plan.partitions()) {
          if (partition.keypads().isEmpty() || partition.keypads().contains(name)) {
            served.add(Integer.toString(partition.number()));
          }
        }
        yield words(PlanPath.of("partitions"), served);
      }
      default -> throw new IllegalArgumentException(path);
    };
  }

  private Fact<PlanAnswer> setting(String path) {
    String word = path.substring("panel.".length()).replace(".", " / ");
    for (Setting setting : Setting.values()) {
      if (setting.word().equals(word)) {
        Settings.Resolved resolved = settings.get(setting);
        return wanted(resolved) ? resolved(resolved) : Fact.missing();
      }
    }
    throw new IllegalArgumentException(path);
  }

  /** Only what the plan states or its regimes ask for is entered; other defaults are left alone. */
  private static boolean wanted(Settings.Resolved resolved) {
    return resolved.origin() == Settings.Origin.PLAN || resolved.origin() == Settings.Origin.REGIME;
  }

  private static Fact<PlanAnswer> resolved(Settings.Resolved resolved) {
    Content content =
        switch (resolved.setting().kind()) {
          case SPAN -> new Content.Time(resolved.value(), resolved.words());
          case COUNT -> new Content.Count(resolved.value());
          case FLAG -> new Content.Word(resolved.words());
        };
    String origin = resolved.origin() == Settings.Origin.PLAN ? "" : resolved.source();
    return Fact.of(new PlanAnswer(resolved.path(), content, origin));
  }

  private Fact<PlanAnswer> monitoring(String path) {
    PlanPath place = PlanPath.of("monitoring");
    return switch (plan.monitoring()) {
      case Fact.Given<Monitoring> given -> monitoring(path, given.value(), place);
      case Fact.Unknown<Monitoring> unknown -> Fact.unknown();
      case Fact.Missing<Monitoring> missing -> Fact.missing();
    };
  }

  private static Fact<PlanAnswer> monitoring(String path, Monitoring monitoring, PlanPath place) {
    return switch (path) {
      case "monitoring.account" ->
          monitoring
              .account()
              .map(text -> new PlanAnswer(place.then("account"), new Content.Text(text)));
      case "monitoring.format" ->
          monitoring
              .format()
              .map(format -> new PlanAnswer(place.then("format"), new Content.Word(format.word())));
      case "monitoring.path 1" -> path(monitoring, place, 0);
      case "monitoring.path 2" -> path(monitoring, place, 1);
      case "monitoring.polling" -> time(place.then("polling"), monitoring.polling());
      case "monitoring.test every" -> time(place.then("test every"), monitoring.testInterval());
      case "monitoring.openings and closings" ->
          yesNo(place.then("openings and closings"), monitoring.openingsAndClosings());
      default -> throw new IllegalArgumentException(path);
    };
  }

  private static Fact<PlanAnswer> path(Monitoring monitoring, PlanPath place, int index) {
    if (monitoring.paths().isEmpty()) {
      return Fact.missing();
    }
    String word = index < monitoring.paths().size() ? monitoring.paths().get(index).word() : "none";
    return Fact.of(new PlanAnswer(place.then("paths"), new Content.Word(word)));
  }

  static Fact<PlanAnswer> time(PlanPath place, Fact<Span> fact) {
    return fact.map(
        span -> new PlanAnswer(place, new Content.Time(span.milliseconds(), span.written())));
  }

  static Fact<PlanAnswer> yesNo(PlanPath place, Fact<Boolean> fact) {
    return fact.map(yes -> new PlanAnswer(place, new Content.Word(yes ? "yes" : "no")));
  }

  static Fact<PlanAnswer> yesNo(PlanPath place, boolean yes) {
    return yesNo(place, Fact.of(yes));
  }

  static Fact<PlanAnswer> text(PlanPath place, String text) {
    return Fact.of(new PlanAnswer(place, new Content.Text(text)));
  }

  static Fact<PlanAnswer> word(PlanPath place, Worded word) {
    return Fact.of(new PlanAnswer(place, new Content.Word(word.word())));
  }

  static Fact<PlanAnswer> words(PlanPath place, List<String> words) {
    return Fact.of(new PlanAnswer(place, new Content.Words(words)));
  }

  /** Numbers of partitions that are given by name. */
  static List<String> numbers(SitePlan plan, List<String> partitions) {
    List<String> numbers = new ArrayList<>();
    for (String name : partitions) {
      plan.findPartition(name)
          .ifPresent(partition -> numbers.add(Integer.toString(partition.number())));
    }
    return numbers;
  }
}
