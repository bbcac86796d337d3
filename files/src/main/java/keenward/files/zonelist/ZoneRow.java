package keenward.files.zonelist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.ZoneResponse;
import keenward.files.QuotedText;
import keenward.files.table.TableRow;
import keenward.files.zonelist.ListedZone.DelaySeconds;
import keenward.files.zonelist.ListedZone.Sensor;

/** Understands one row of a list that has a number. */
final class ZoneRow {

  private static final Pattern SECONDS =
      Pattern.compile(
          "(?i)([0-9]{1,3})\\s*(?:s|sec|secs|second|seconds|seg|segundos|sek|sekunden|secondes|\"|'')(?![\\p{L}])");
  private static final Pattern MINUTES =
      Pattern.compile(
          "(?i)([0-9]{1,2})(?:[.,]([0-9]))?\\s*(?:min|mins|minutes|minutos|minuten)(?![\\p{L}])");
  private static final Pattern CLOCK =
      Pattern.compile("(?<![0-9])([0-9]{1,2}):([0-5][0-9])(?![0-9:])");
  private static final Pattern TIMES = Pattern.compile("(?i)^([2-9])\\s*(?:x|×|\\*)\\s*");
  private static final Pattern BETWEEN_SENSORS =
      Pattern.compile("(?i)\\s*(?:[+&,;/]|\\s(?:and|plus|with|y|con|und|mit|et|avec)\\s)\\s*");
  private static final Pattern SILENT =
      Pattern.compile("(?i)\\b(?:silent|silencios[oa]|silencieux|silencieuse|still|stiller?)\\b");

  private final TableRow row;
  private final Columns columns;
  private final KnownWords words;
  private final List<String> allPartitions;
  private final List<ListNote> notes;
  private final List<String> kept = new ArrayList<>();
  private String whyNot = "";

  ZoneRow(
      TableRow row,
      Columns columns,
      KnownWords words,
      List<String> allPartitions,
      List<ListNote> notes) {
    this.row = row;
    this.columns = columns;
    this.words = words;
    this.allPartitions = allPartitions;
    this.notes = notes;
  }

  /** Why there is no zone. */
  String whyNot() {
    return whyNot;
  }

  /** The zone; empty when nothing tells what it does. */
  Optional<ListedZone> zone(int number) {
    List<ListNote> before = List.copyOf(notes);
    List<Sensor> sensors = sensors();
    Optional<ZoneResponse> response = response(sensors);
    if (response.isEmpty()) {
      // What was said of the row is void: it is kept as a whole.
      notes.clear();
      notes.addAll(before);
      return Optional.empty();
    }
    Optional<DelaySeconds> delay = delay(response.get());
    boolean silent = SILENT.matcher(cell(Column.RESPONSE)).find();
    List<Sensor> fitted = radio(sensors);
    Optional<LoopWiring> wiring = wiring(fitted);
    Optional<Integer> event = event();
    List<String> partitions = partitions();
    String name = name(number);
    others();
    return Optional.of(
        new ListedZone(
            row.number(),
            number,
            name,
            response.get(),
            partitions,
            fitted,
            wiring,
            delay,
            event,
            silent,
            String.join("; ", kept)));
  }

  private String cell(Column column) {
    return columns.find(column).map(row::cell).orElse("");
  }

  private String head(Column column) {
    return columns.find(column).map(columns.heads()::get).orElse("");
  }

  private void say(Column column, ListNote.Kind kind, String text) {
    notes.add(new ListNote(row.number(), head(column), kind, text));
  }

  /** Keeps a cell in the zone's note, with the head of its column. */
  private void keep(Column column) {
    String head = head(column);
    String bare = head.startsWith("'") ? head.substring(1, head.length() - 1) : head;
    kept.add(bare + ": " + cell(column));
  }

  private List<Sensor> sensors() {
    String cell = cell(Column.DEVICE);
    if (Plain.words(cell).isEmpty()) {
      return List.of();
    }
    Vocabulary.Reading<DeviceKind> whole = words.kinds().read(cell);
    List<Sensor> sensors = new ArrayList<>();
    if (whole.rest().isEmpty() && whole.meanings().size() == 1 && !TIMES.matcher(cell).find()) {
      // "D/W" is one thing, and "contact + contact" two.
      int count =
          BETWEEN_SENSORS.split(cell, -1).length == whole.found().size() ? whole.found().size() : 1;
      for (int i = 0; i < count; i++) {
        sensors.add(wired(whole.meanings().getFirst()));
      }
      return sensors;
    }
    boolean clear = true;
    for (String part : BETWEEN_SENSORS.split(cell, -1)) {
      Matcher times = TIMES.matcher(part.strip());
      int count = times.find() ? Integer.parseInt(times.group(1)) : 1;
      Vocabulary.Reading<DeviceKind> reading = words.kinds().read(times.replaceFirst(""));
      clear &= reading.rest().isEmpty() && reading.meanings().size() == 1;
      kind(reading)
          .ifPresent(kind -> {
            for (int i = 0; i < count; i++) {
              sensors.add(wired(kind));
            }
          });
    }
    if (sensors.isEmpty()) {
      say(
          Column.DEVICE,
          ListNote.Kind.PROBLEM,
          QuotedText.of(cell) + " is no known kind of sensor; kept as a note of the zone");
      keep(Column.DEVICE);
    } else if (!clear) {
      say(
          Column.DEVICE,
          ListNote.Kind.GUESS,
          QuotedText.of(cell) + " is read as " + said(sensors) + "; the words are kept as a note");
      keep(Column.DEVICE);
    } else if (sensors.size() > 1) {
      say(
          Column.DEVICE,
          ListNote.Kind.READ,
          QuotedText.of(cell) + " is read as " + said(sensors) + " on one line");
    }
    return sensors;
  }

  private static Sensor wired(DeviceKind kind) {
    return new Sensor(kind, false, "");
  }

  private static Optional<DeviceKind> kind(Vocabulary.Reading<DeviceKind> reading) {
    List<DeviceKind> kinds = reading.meanings();
    if (kinds.contains(DeviceKind.DUAL_MOTION)) {
      return Optional.of(DeviceKind.DUAL_MOTION);
    }
    return kinds.stream().findFirst();
  }

  private static String said(List<Sensor> sensors) {
    return String.join(" and ", sensors.stream().map(sensor -> sensor.kind().word()).toList());
  }

  private Optional<ZoneResponse> response(List<Sensor> sensors) {
    String cell = cell(Column.RESPONSE);
    Optional<ZoneResponse> usual =
        sensors.stream().map(Sensor::kind).findFirst().flatMap(ZoneListReader::usual);
    if (Plain.words(cell).isEmpty()) {
      usual.ifPresent(guess ->
          notes.add(
              new ListNote(
                  row.number(),
                  head(Column.RESPONSE),
                  ListNote.Kind.GUESS,
                  "nothing says what the zone does: "
                      + guess.word()
                      + " is usual for "
                      + sensors.getFirst().kind().word())));
      whyNot = "nothing says what the zone does";
      return usual;
    }
    Vocabulary.Reading<ZoneResponse> reading =
        words.responses().read(withoutTimes(SILENT.matcher(cell).replaceAll(" ")));
    List<ZoneResponse> meanings = new ArrayList<>(reading.meanings());
    if (meanings.size() > 1) {
      // "Fire 24 h" says twice the same; only alone does the time of day tell something.
      meanings.remove(ZoneResponse.TWENTY_FOUR_HOUR);
    }
    if (meanings.isEmpty()) {
      whyNot =
          QuotedText.of(cell)
              + " is no known word for what a zone does; say what it means in a map (words:)";
      return Optional.empty();
    }
    ZoneResponse chosen = chosen(meanings);
    if (meanings.size() > 1 || !reading.rest().isEmpty()) {
      say(
          Column.RESPONSE,
          ListNote.Kind.GUESS,
          QuotedText.of(cell) + " is read as " + chosen.word() + "; the words are kept as a note");
      keep(Column.RESPONSE);
    }
    return Optional.of(chosen);
  }

  /**
   * Of several meanings the one that says more: a perimeter zone is instant, a follower on the
   * entry.
   */
  private static ZoneResponse chosen(List<ZoneResponse> meanings) {
    for (ZoneResponse strong :
        List.of(
            ZoneResponse.FIRE,
            ZoneResponse.CARBON_MONOXIDE,
            ZoneResponse.HOLD_UP,
            ZoneResponse.MEDICAL,
            ZoneResponse.FOLLOWER,
            ZoneResponse.PERIMETER)) {
      if (meanings.contains(strong)) {
        return strong;
      }
    }
    return meanings.getFirst();
  }

  private static String withoutTimes(String cell) {
    return CLOCK
        .matcher(MINUTES.matcher(SECONDS.matcher(cell).replaceAll(" ")).replaceAll(" "))
        .replaceAll(" ");
  }

  private Optional<DelaySeconds> delay(ZoneResponse response) {
    String own = cell(Column.DELAY);
    Optional<DelaySeconds> stated = time(own).or(() -> bareSeconds(own));
    if (stated.isEmpty() && !Plain.words(own).isEmpty()) {
      say(
          Column.DELAY,
          ListNote.Kind.PROBLEM,
          QuotedText.of(own) + " is no time; kept as a note of the zone");
      keep(Column.DELAY);
    }
    Optional<DelaySeconds> delay = stated.or(() -> time(cell(Column.RESPONSE)));
    if (delay.isPresent() && response != ZoneResponse.ENTRY_EXIT) {
      if (delay.get().seconds() > 0) {
        Column from = stated.isPresent() ? Column.DELAY : Column.RESPONSE;
        say(
            from,
            ListNote.Kind.PROBLEM,
            "an entry delay of "
                + delay.get().seconds()
                + " s on a zone that is no entry zone; kept as a note of the zone");
        keep(from);
      }
      return Optional.empty();
    }
    return delay.filter(each -> each.seconds() > 0);
  }

  private static Optional<DelaySeconds> time(String text) {
    Matcher clock = CLOCK.matcher(text);
    if (clock.find()) {
      return Optional.of(
          new DelaySeconds(
              Integer.parseInt(clock.group(1)) * 60 + Integer.parseInt(clock.group(2))));
    }
    Matcher minutes = MINUTES.matcher(text);
    if (minutes.find()) {
      int tenths = minutes.group(2) == null ? 0 : Integer.parseInt(minutes.group(2));
      return Optional.of(new DelaySeconds(Integer.parseInt(minutes.group(1)) * 60 + tenths * 6));
    }
    Matcher seconds = SECONDS.matcher(text);
    return seconds.find()
        ? Optional.of(new DelaySeconds(Integer.parseInt(seconds.group(1))))
        : Optional.empty();
  }

  private static Optional<DelaySeconds> bareSeconds(String text) {
    return text.matches("[0-9]{1,3}")
        ? Optional.of(new DelaySeconds(Integer.parseInt(text)))
        : Optional.empty();
  }

  /** The sensors, wireless where wiring or a serial number says so. */
  private List<Sensor> radio(List<Sensor> sensors) {
    String serial = cell(Column.SERIAL);
    boolean hasSerial = !Plain.words(serial).isEmpty();
    boolean saysRadio =
        Words.WIRINGS.read(cell(Column.WIRING)).found().stream()
            .anyMatch(found -> found.meaning().isEmpty());
    if (!hasSerial && !saysRadio) {
      return sensors;
    }
    if (sensors.isEmpty()) {
      if (hasSerial) {
        say(
            Column.SERIAL,
            ListNote.Kind.PROBLEM,
            "a serial number, and nothing says what is fitted; kept as a note of the zone");
        keep(Column.SERIAL);
      }
      return sensors;
    }
    if (hasSerial && !saysRadio) {
      say(
          Column.SERIAL,
          ListNote.Kind.GUESS,
          "taken for a wireless sensor, since it has a serial number");
    }
    if (hasSerial && sensors.size() > 1) {
      say(
          Column.SERIAL,
          ListNote.Kind.GUESS,
          "taken for the serial number of the first sensor of the line");
    }
    List<Sensor> radio = new ArrayList<>();
    for (Sensor sensor : sensors) {
      radio.add(new Sensor(sensor.kind(), true, radio.isEmpty() ? serial : ""));
    }
    return radio;
  }

  private Optional<LoopWiring> wiring(List<Sensor> fitted) {
    String cell = cell(Column.WIRING);
    if (Plain.words(cell).isEmpty()) {
      return Optional.empty();
    }
    Vocabulary.Reading<Optional<LoopWiring>> reading = Words.WIRINGS.read(cell);
    List<Optional<LoopWiring>> meanings = reading.meanings();
    boolean clear = meanings.size() == 1 && reading.rest().isEmpty();
    if (!clear) {
      say(
          Column.WIRING,
          meanings.size() == 1 ? ListNote.Kind.GUESS : ListNote.Kind.PROBLEM,
          QuotedText.of(cell)
              + (meanings.size() == 1
                  ? " is read as " + meanings.getFirst().map(LoopWiring::word).orElse("radio")
                  : " does not say how the loop is wired")
              + "; kept as a note of the zone");
      keep(Column.WIRING);
    } else if (meanings.getFirst().isEmpty() && fitted.isEmpty()) {
      keep(Column.WIRING);
    }
    return meanings.size() == 1 ? meanings.getFirst() : Optional.empty();
  }

  private Optional<Integer> event() {
    String cell = cell(Column.EVENT);
    if (cell.matches("[1-9][0-9]{2}")) {
      return Optional.of(Integer.valueOf(cell));
    }
    if (!Plain.words(cell).isEmpty()) {
      say(
          Column.EVENT,
          ListNote.Kind.PROBLEM,
          QuotedText.of(cell)
              + " is no DC-05 event code of three digits; kept as a note of the zone");
      keep(Column.EVENT);
    }
    return Optional.empty();
  }

  private List<String> partitions() {
    if (allPartitions.size() < 2) {
      return allPartitions;
    }
    String cell = cell(Column.PARTITION);
    List<String> own = ZoneListReader.partitionNames(cell);
    if (!own.isEmpty()) {
      return own;
    }
    if (!ZoneListReader.isAll(cell)) {
      say(
          Column.PARTITION,
          ListNote.Kind.GUESS,
          "no partition is named: taken for a zone of all of them");
    }
    return allPartitions;
  }

  private String name(int number) {
    String name = cell(Column.NAME);
    String place = cell(Column.PLACE);
    Column used = name.isEmpty() ? Column.PLACE : Column.NAME;
    String best = name.isEmpty() ? place : name;
    if (!name.isEmpty() && !place.isEmpty()) {
      keep(Column.PLACE);
    }
    if (best.isEmpty()) {
      String fitted = cell(Column.DEVICE);
      best = fitted.isEmpty() ? "Zone " + number : fitted;
      say(
          Column.NAME,
          ListNote.Kind.GUESS,
          "the zone has no name: " + QuotedText.of(best) + " stands in");
    }
    String cut = ZoneListReader.shortName(best);
    if (!cut.equals(best)) {
      say(
          used,
          ListNote.Kind.PROBLEM,
          "the name is longer than 60 characters; kept whole in the note");
      keep(used);
    }
    return cut;
  }

  /** Everything in columns that have no meaning of their own. */
  private void others() {
    for (int column = 0; column < row.cells().size(); column++) {
      if (columns.meanings().get(column) == Column.NOTE && !row.cell(column).isEmpty()) {
        String head = columns.heads().get(column);
        boolean plainNote =
            head.startsWith("'")
                && Words.COLUMNS.read(head).found().stream()
                    .anyMatch(found -> found.meaning() == Column.NOTE);
        String bare = head.startsWith("'") ? head.substring(1, head.length() - 1) : head;
        kept.add(plainNote ? row.cell(column) : bare + ": " + row.cell(column));
      }
    }
  }
}
