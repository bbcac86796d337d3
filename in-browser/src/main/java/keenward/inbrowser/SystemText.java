package keenward.inbrowser;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.CrossGroup;
import keenward.core.rehearsal.EntryDelays;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.Option;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.RehearsalOptions;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.Timings;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.rehearsal.ZoneTrait;

/**
 * A system as text, to hand it from the program to a page. The page and the program are of one
 * version, so the text is no file format and is read by nobody else.
 *
 * <p>A line is a part of the system: a word for what it is, then its values in the order of its
 * record, apart by tabs; several values in one place stand apart by commas. In names a backslash
 * hides a tab, a line end or itself.
 */
public final class SystemText {

  private SystemText() {}

  /** Writes a system. The same system gives the same text. */
  public static String write(SystemModel model) {
    Lines lines = new Lines();
    for (PartitionModel partition : model.partitions()) {
      lines.begin("partition");
      lines.add(partition.number());
      lines.addName(partition.name());
      lines.addAll(partition.commonTo());
      lines.add(partition.automaticArmingTenths());
    }
    model.zones().forEach(zone -> write(zone, lines));
    for (UserModel user : model.users()) {
      lines.begin("user");
      lines.add(user.number());
      lines.addName(user.name());
      lines.addAll(new TreeSet<>(user.mayArm()));
      lines.addAll(new TreeSet<>(user.mayDisarm()));
      lines.add(user.mayBypass());
      lines.add(user.duress());
      lines.add(user.technician());
    }
    for (KeypadModel keypad : model.keypads()) {
      lines.begin("keypad");
      lines.addName(keypad.name());
      lines.add(keypad.kind().name());
      lines.addAll(new TreeSet<>(keypad.partitions()));
    }
    for (CrossGroup group : model.crossGroups()) {
      lines.begin("cross");
      lines.addAll(group.zones());
      lines.add(group.windowTenths());
    }
    for (TimingSetting setting : TimingSetting.values()) {
      lines.begin("timing");
      lines.add(setting.name());
      lines.add(model.timings().of(setting));
    }
    for (Option option : Option.values()) {
      lines.begin("option");
      lines.add(option.name());
      lines.add(model.options().has(option));
    }
    return lines.text();
  }

  private static void write(ZoneModel zone, Lines lines) {
    lines.begin("zone");
    lines.add(zone.number());
    lines.addName(zone.name());
    lines.add(zone.response().name());
    lines.add(zone.partition());
    lines.addAll(new TreeSet<>(zone.liveIn()));
    lines.add(zone.delays().awayTenths());
    lines.add(zone.delays().stayTenths());
    lines.add(zone.delays().nightTenths());
    lines.addAll(new TreeSet<>(zone.traits()));
    lines.add(zone.swingerLimit());
    lines.add(zone.holdTenths());
    lines.addAll(zone.releasedBy());
    lines.add(zone.eventCode());
  }

  /**
   * Reads what {@link #write} wrote.
   *
   * @throws IllegalArgumentException if it did not write this
   */
  public static SystemModel read(String text) {
    List<PartitionModel> partitions = new ArrayList<>();
    List<ZoneModel> zones = new ArrayList<>();
    List<UserModel> users = new ArrayList<>();
    List<KeypadModel> keypads = new ArrayList<>();
    List<CrossGroup> crossGroups = new ArrayList<>();
    Timings timings = Timings.standard();
    RehearsalOptions options = RehearsalOptions.standard();
    for (String line : text.split("\n", -1)) {
      if (line.isEmpty()) {
        continue;
      }
      Values values = new Values(line);
      switch (values.word()) {
        case "partition" ->
            partitions.add(
                new PartitionModel(
                    values.number(), values.name(), values.numbers(), values.number()));
        case "zone" -> zones.add(zone(values));
        case "user" ->
            users.add(
                new UserModel(
                    values.number(),
                    values.name(),
                    values.numberSet(),
                    values.numberSet(),
                    values.yes(),
                    values.yes(),
                    values.yes()));
        case "keypad" ->
            keypads.add(
                new KeypadModel(
                    values.name(), KeypadModel.Kind.valueOf(values.word()), values.numberSet()));
        case "cross" -> crossGroups.add(new CrossGroup(values.numbers(), values.number()));
        case "timing" ->
            timings = timings.with(TimingSetting.valueOf(values.word()), values.number());
        case "option" -> options = options.with(Option.valueOf(values.word()), values.yes());
        default -> throw new IllegalArgumentException("not a part of a system: " + line);
      }
      values.needEnd();
    }
    return new SystemModel(partitions, zones, users, keypads, crossGroups, timings, options);
  }

  private static ZoneModel zone(Values values) {
    return new ZoneModel(
        values.number(),
        values.name(),
        ZoneResponse.valueOf(values.word()),
        values.number(),
        values.set(ArmingMode::valueOf),
        new EntryDelays(values.number(), values.number(), values.number()),
        values.set(ZoneTrait::valueOf),
        values.number(),
        values.number(),
        values.numbers(),
        values.number());
  }

  /** The text as it grows. */
  private static final class Lines {

    private final StringBuilder text = new StringBuilder();

    void begin(String word) {
      text.append(text.isEmpty() ? "" : "\n").append(word);
    }

    void add(int number) {
      add(Integer.toString(number));
    }

    void add(boolean yes) {
      add(yes ? "yes" : "no");
    }

    void add(String word) {
      text.append('\t').append(word);
    }

    void addName(String name) {
      add(name.replace("\\", "\\\\").replace("\t", "\\t").replace("\n", "\\n"));
    }

    void addAll(Collection<?> values) {
      StringBuilder joined = new StringBuilder();
      for (Object value : values) {
        joined.append(joined.isEmpty() ? "" : ",");
        joined.append(value instanceof Enum<?> word ? word.name() : value.toString());
      }
      add(joined.toString());
    }

    String text() {
      return text + "\n";
    }
  }
}
