package keenward.files.zonelist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.plan.ZoneResponse;
import keenward.files.yaml.NewValue;
import keenward.files.zonelist.ListedZone.Sensor;

/** Writes a list of zones as a site plan. */
public final class SiteText {

  private static final int MOST_DELAYS = 9;
  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_NOTE = 4000;
  private static final int LONGEST_COMMENT = 300;

  private final ZoneList list;
  private final StringBuilder text = new StringBuilder();
  private final Map<Integer, Integer> delays = new LinkedHashMap<>();
  private final Set<String> deviceNames = new HashSet<>();
  private final Map<ListedZone, List<NewValue>> watched = new LinkedHashMap<>();

  private SiteText(ZoneList list) {
    this.list = list;
  }

  /**
   * The plan as text.
   *
   * @param source name of the list's file, for the first comment
   * @param otherwise name of the site where the list has none
   */
  public static String of(ZoneList list, String source, String otherwise) {
    return new SiteText(list).write(source, otherwise);
  }

  private String write(String source, String otherwise) {
    comment(
        "Imported from " + source + ". What was guessed is in the report of the import: check it.");
    list.comments().forEach(this::comment);
    line("keenward: 1");
    String site = list.site().isEmpty() ? otherwise : list.site();
    line("site: " + NewValue.text(ZoneListReader.shortName(site)).inline());
    delays();
    if (!delays.isEmpty()) {
      Map<String, NewValue> times = new LinkedHashMap<>();
      delays.forEach(
          (seconds, number) -> times.put(Integer.toString(number), NewValue.plain(seconds + " s")));
      line("panel: " + names(Map.of("entry delays", new NewValue.Names(times))));
    }
    partitions();
    devices();
    zones();
    unplaced();
    return text.toString();
  }

  private void delays() {
    Set<Integer> seconds = new TreeSet<>();
    boolean plain = false;
    for (ListedZone zone : list.zones()) {
      zone.delay().ifPresent(delay -> seconds.add(delay.seconds()));
      plain |= zone.response() == ZoneResponse.ENTRY_EXIT && zone.delay().isEmpty();
    }
    // Zones that only say "delayed" have the first delay, whose time nobody stated.
    int number = plain && !seconds.isEmpty() ? 2 : 1;
    for (int each : seconds) {
      if (number <= MOST_DELAYS) {
        delays.put(each, number++);
      }
    }
  }

  private void partitions() {
    Set<String> names = new LinkedHashSet<>();
    list.zones().forEach(zone -> names.addAll(zone.partitions()));
    if (!names.isEmpty()) {
      line("partitions:");
      int number = 1;
      for (String name : names) {
        line("  " + NewValue.name(name) + ": { number: " + number++ + " }");
      }
    }
  }

  private void devices() {
    boolean headed = false;
    for (ListedZone zone : list.zones()) {
      List<NewValue> names = new ArrayList<>();
      for (Sensor sensor : zone.devices()) {
        if (!sensor.radio()) {
          names.add(NewValue.plain(sensor.kind().word()));
          continue;
        }
        if (!headed) {
          line("devices:");
          headed = true;
        }
        String name = free(zone.name() + " " + sensor.kind().word());
        Map<String, NewValue> facts = new LinkedHashMap<>();
        facts.put("kind", NewValue.plain(sensor.kind().word()));
        facts.put("wiring", NewValue.plain("radio"));
        if (!sensor.serial().isEmpty()) {
          facts.put("serial", NewValue.text(sensor.serial()));
        }
        line("  " + NewValue.name(name) + ": " + names(facts));
        names.add(NewValue.text(name));
      }
      watched.put(zone, names);
    }
  }

  /** A name that no device has yet. */
  private String free(String wanted) {
    String base = wanted.length() <= LONGEST_NAME ? wanted : ZoneListReader.shortName(wanted);
    String name = base;
    for (int i = 2; !deviceNames.add(name); i++) {
      String end = " " + i;
      name = base.substring(0, Math.min(base.length(), LONGEST_NAME - end.length())).strip() + end;
    }
    return name;
  }

  private void zones() {
    if (list.zones().isEmpty()) {
      line("zones: {}");
      return;
    }
    line("zones:");
    for (ListedZone zone : list.zones()) {
      Map<String, NewValue> facts = new LinkedHashMap<>();
      facts.put("name", NewValue.text(zone.name()));
      facts.put("response", NewValue.plain(zone.response().word()));
      if (!zone.partitions().isEmpty()) {
        List<NewValue> names = zone.partitions().stream().map(NewValue::text).toList();
        facts.put("partition", names.size() == 1 ? names.getFirst() : new NewValue.Items(names));
      }
      List<NewValue> devices = watched.getOrDefault(zone, List.of());
      if (devices.size() == 1) {
        facts.put("device", devices.getFirst());
      } else if (!devices.isEmpty()) {
        facts.put("devices", new NewValue.Items(devices));
      }
      zone.wiring().ifPresent(wiring -> facts.put("wiring", NewValue.plain(wiring.word())));
      delayNumber(zone, facts);
      zone.event().ifPresent(event -> facts.put("event", NewValue.plain(event.toString())));
      if (zone.silent()) {
        facts.put("silent", NewValue.plain("yes"));
      }
      if (!zone.note().isEmpty()) {
        facts.put("note", NewValue.text(cut(zone.note(), LONGEST_NOTE)));
      }
      line("  " + zone.number() + ": " + names(facts));
    }
  }

  private void delayNumber(ListedZone zone, Map<String, NewValue> facts) {
    zone.delay()
        .map(delay -> delays.getOrDefault(delay.seconds(), 0))
        .filter(number -> number > 1)
        .ifPresent(number -> facts.put("entry delay", NewValue.plain(number.toString())));
  }

  private void unplaced() {
    if (!list.unplaced().isEmpty()) {
      line("unplaced:");
      list.unplaced()
          .forEach(row -> {
            Map<String, NewValue> facts = new LinkedHashMap<>();
            facts.put("text", NewValue.text(row.text()));
            facts.put("why", NewValue.text(cut(row.why(), 200)));
            line("  - " + names(facts));
          });
    }
  }

  private static String names(Map<String, NewValue> facts) {
    return new NewValue.Names(facts).inline();
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 3) + "...";
  }

  private void comment(String words) {
    String rest = words;
    while (rest.length() > LONGEST_COMMENT) {
      line("# " + rest.substring(0, LONGEST_COMMENT));
      rest = rest.substring(LONGEST_COMMENT);
    }
    line("# " + rest);
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
