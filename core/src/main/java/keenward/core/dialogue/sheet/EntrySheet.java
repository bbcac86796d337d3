package keenward.core.dialogue.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.CrossZone;
import keenward.core.plan.Fact;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.Partition;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.Worded;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Quantity;
import keenward.core.quantities.Span;

/**
 * The values that a plan wants in a panel whose dialogue nobody has described. It names no key and
 * no prompt, and nothing of it is proved: the panel's own manual leads the way, and the walk test
 * decides.
 *
 * @param parts the parts, in the order in which a technician usually enters them
 */
public record EntrySheet(List<Part> parts) {

  /**
   * Values that belong together.
   *
   * @param title what they are of, such as {@code Zone 5}
   * @param values the values
   */
  public record Part(String title, List<Value> values) {
    public Part {
      values = List.copyOf(values);
    }
  }

  /**
   * One value to enter.
   *
   * @param what what it is
   * @param value the value in words
   * @param source where it comes from when the plan does not state it; empty when it does
   */
  public record Value(String what, String value, String source) {}

  private static final String UNKNOWN = "not known yet";

  public EntrySheet {
    parts = List.copyOf(parts);
  }

  /** The sheet of a plan. */
  public static EntrySheet of(SitePlan plan) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("System", system(plan)));
    for (Partition partition : plan.partitions()) {
      parts.add(new Part("Partition " + partition.number(), partition(partition)));
    }
    for (Zone zone : plan.zones()) {
      parts.add(new Part("Zone " + zone.number(), zone(plan, zone)));
    }
    for (User user : plan.users()) {
      parts.add(new Part("User " + user.number(), user(user)));
    }
    plan.monitoring()
        .find()
        .ifPresent(monitoring -> {
          List<Value> values = new ArrayList<>();
          add(values, "Account", monitoring.account());
          add(values, "Event codes", monitoring.format().map(Worded::word));
          addWords(values, "Paths", monitoring.paths());
          add(values, "Test signal every", monitoring.testInterval().map(Span::written));
          add(values, "Report openings and closings", yesNo(monitoring.openingsAndClosings()));
          if (!values.isEmpty()) {
            parts.add(new Part("Monitoring centre", values));
          }
        });
    return new EntrySheet(parts);
  }

  private static List<Value> system(SitePlan plan) {
    List<Value> values = new ArrayList<>();
    for (Settings.Resolved setting : Settings.of(plan, Map.of()).all()) {
      String name =
          setting.setting() == Setting.ENTRY_DELAY
              ? "Entry delay " + setting.index()
              : capital(setting.setting().word());
      values.add(
          new Value(
              name,
              setting.words(),
              setting.origin() == Settings.Origin.PLAN ? "" : "default of " + setting.source()));
    }
    for (CrossZone group : plan.panel().crossZones()) {
      values.add(
          new Value(
              "Cross-zone",
              "zones "
                  + String.join(", ", group.zones().stream().map(String::valueOf).toList())
                  + " within "
                  + group.window().map(Span::written).orElse(UNKNOWN),
              ""));
    }
    return values;
  }

  private static List<Value> partition(Partition partition) {
    List<Value> values = new ArrayList<>();
    values.add(new Value("Name", partition.name(), ""));
    addNames(values, "Keypads", partition.keypads());
    addNames(values, "Common area of", partition.commonTo());
    return values;
  }

  private static List<Value> zone(SitePlan plan, Zone zone) {
    List<Value> values = new ArrayList<>();
    values.add(new Value("Name", zone.name(), ""));
    values.add(new Value("Response", zone.response().word(), ""));
    if (plan.hasPartitions()) {
      addNames(values, "Partition", zone.partitions());
    }
    for (ZoneDevice watched : zone.devices()) {
      values.add(device(watched));
      if (watched instanceof ZoneDevice.Fitted fitted) {
        add(values, "Serial", fitted.device().serial());
      }
    }
    add(values, "Loop", zone.wiring().map(LoopWiring::word));
    addNames(values, "Resistors", zone.resistors().stream().map(Quantity::written).toList());
    add(values, "Contact at rest", zone.contact().map(Worded::word));
    List<ArmingMode> modes = zone.liveModes();
    if (!zone.response().isAlwaysLive()) {
      values.add(
          new Value(
              "Live in",
              String.join(", ", modes.stream().map(ArmingMode::word).toList()),
              zone.liveIn().isEmpty() ? "usual for " + zone.response().word() : ""));
    }
    add(values, "Entry delay", zone.entryDelay().map(String::valueOf));
    add(values, "May be bypassed", yesNo(zone.mayBypass()));
    add(values, "May arm while open", yesNo(zone.mayForceArm()));
    add(values, "Chime", yesNo(zone.chime()));
    add(values, "Swinger limit", zone.swingerLimit().map(String::valueOf));
    add(values, "Silent", yesNo(zone.silent()));
    addNames(values, "Follows zones", zone.follows().stream().map(String::valueOf).toList());
    add(values, "Event code", zone.event().map(String::valueOf));
    add(values, "Reports restore", yesNo(zone.reportsRestore()));
    return values;
  }

  private static Value device(ZoneDevice watched) {
    return switch (watched) {
      case ZoneDevice.Unplaced unplaced -> new Value("Device", unplaced.kind().word(), "");
      case ZoneDevice.Fitted fitted ->
          new Value(
              "Device",
              fitted.device().name()
                  + (fitted.inputName().isEmpty() ? "" : ", input " + fitted.inputName()),
              "");
    };
  }

  private static List<Value> user(User user) {
    List<Value> values = new ArrayList<>();
    values.add(new Value("Name", user.name(), ""));
    values.add(new Value("Role", user.role().word(), ""));
    addNames(values, "Partitions", user.partitions());
    add(values, "May bypass", yesNo(user.mayBypass()));
    values.add(new Value("Code", "the holder chooses and enters it", ""));
    return values;
  }

  private static void add(List<Value> values, String what, Fact<String> fact) {
    Optional<String> value = fact instanceof Fact.Unknown ? Optional.of(UNKNOWN) : fact.find();
    value.ifPresent(text -> values.add(new Value(what, text, "")));
  }

  private static void addWords(List<Value> values, String what, List<? extends Worded> words) {
    addNames(values, what, words.stream().map(Worded::word).toList());
  }

  private static void addNames(List<Value> values, String what, List<String> names) {
    if (!names.isEmpty()) {
      values.add(new Value(what, String.join(", ", names), ""));
    }
  }

  private static Fact<String> yesNo(Fact<Boolean> fact) {
    return fact.map(yes -> yes ? "yes" : "no");
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1).replace(" / ", ", ");
  }
}
