package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import keenward.core.plan.CrossZone;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.plan.Worded;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;

/** What a plan says about one zone. */
final class ZoneAnswers {
  private final SitePlan plan;
  private final Zone zone;

  private ZoneAnswers(SitePlan plan, Zone zone) {
    this.plan = plan;
    this.zone = zone;
  }

  static Fact<PlanAnswer> of(SitePlan plan, Zone zone, String path) {
    return new ZoneAnswers(plan, zone).answer(path);
  }

  private Fact<PlanAnswer> answer(String path) {
    PlanPath place = zone.path();
    return switch (path) {
      case "zone.in use" -> PlanAnswers.yesNo(place, true);
      case "zone.name" -> PlanAnswers.text(place.then("name"), zone.name());
      case "zone.response" -> PlanAnswers.word(place.then("response"), zone.response());
      case "zone.partitions" ->
          PlanAnswers.words(place.then("partition"), PlanAnswers.numbers(plan, zone.partitions()));
      case "zone.wiring" -> wiring();
      case "zone.device.serial" ->
          radioDevice(device ->
              device
                  .device()
                  .serial()
                  .map(serial ->
                      new PlanAnswer(
                          PlanPath.of("devices", device.device().name(), "serial"),
                          new Content.Text(compact(serial)))));
      case "zone.device.input" ->
          radioDevice(device ->
              device.inputName().isEmpty()
                  ? Fact.missing()
                  : Fact.of(
                      new PlanAnswer(place.then("device"), new Content.Word(device.inputName()))));
      case "zone.device.kind" -> kind();
      case "zone.loop" -> worded(place.then("wiring"), zone.wiring());
      case "zone.contact" -> worded(place.then("contact"), zone.contact());
      case "zone.live in" -> liveIn();
      case "zone.entry delay" -> number(place.then("entry delay"), zone.entryDelay());
      case "zone.bypass" -> PlanAnswers.yesNo(place.then("bypass"), zone.mayBypass());
      case "zone.force arm" -> PlanAnswers.yesNo(place.then("force arm"), zone.mayForceArm());
      case "zone.chime" -> PlanAnswers.yesNo(place.then("chime"), zone.chime());
      case "zone.silent" -> PlanAnswers.yesNo(place.then("silent"), zone.silent());
      case "zone.restore" -> PlanAnswers.yesNo(place.then("restore"), zone.reportsRestore());
      case "zone.swinger limit" -> number(place.then("swinger limit"), zone.swingerLimit());
      case "zone.cross zone" -> crossZone();
      case "zone.follows" -> follows();
      case "zone.event" ->
          zone.event()
              .map(code ->
                  new PlanAnswer(place.then("event"), new Content.Text(Integer.toString(code))));
      default -> throw new IllegalArgumentException(path);
    };
  }

  private Fact<PlanAnswer> wiring() {
    Set<Wiring> wirings = EnumSet.noneOf(Wiring.class);
    for (ZoneDevice device : zone.devices()) {
      if (device instanceof ZoneDevice.Fitted fitted) {
        fitted.device().traits().wiring().find().ifPresent(wirings::add);
      }
    }
    if (wirings.isEmpty() && zone.wiring().isGiven()) {
      wirings.add(Wiring.WIRED);
    }
    PlanPath place = zone.path().then("device");
    if (wirings.isEmpty()) {
      return Fact.missing();
    }
    if (wirings.size() > 1) {
      return tooMuch(
          place,
          "zone " + zone.number() + " joins devices that reach the panel in different ways",
          "give them zones of their own");
    }
    return PlanAnswers.word(place, wirings.iterator().next());
  }

  private Fact<PlanAnswer> radioDevice(Function<ZoneDevice.Fitted, Fact<PlanAnswer>> answer) {
    List<ZoneDevice.Fitted> radio = new ArrayList<>();
    for (ZoneDevice device : zone.devices()) {
      if (device instanceof ZoneDevice.Fitted fitted
          && fitted.device().traits().wiring().orElse(Wiring.WIRED) == Wiring.RADIO) {
        radio.add(fitted);
      }
    }
    if (radio.isEmpty()) {
      return Fact.missing();
    }
    if (radio.size() > 1) {
      return tooMuch(
          zone.path().then("devices"),
          "zone " + zone.number() + " watches " + radio.size() + " radio inputs",
          "give each a zone of its own");
    }
    return answer.apply(radio.get(0));
  }

  private Fact<PlanAnswer> kind() {
    Set<DeviceKind> kinds = EnumSet.noneOf(DeviceKind.class);
    zone.devices().forEach(device -> kinds.add(device.kind()));
    PlanPath place = zone.path().then("device");
    if (kinds.isEmpty()) {
      return Fact.missing();
    }
    return kinds.size() == 1
        ? PlanAnswers.word(place, kinds.iterator().next())
        : tooMuch(
            place,
            "zone " + zone.number() + " watches devices of several kinds",
            "give each kind a zone of its own");
  }

  private Fact<PlanAnswer> liveIn() {
    if (zone.response().isAlwaysLive()) {
      return Fact.missing();
    }
    List<String> words = new ArrayList<>();
    zone.liveModes().forEach(mode -> words.add(mode.word()));
    return PlanAnswers.words(zone.path().then("live in"), words);
  }

  private Fact<PlanAnswer> crossZone() {
    List<CrossZone> groups = plan.panel().crossZones();
    PlanPath place = PlanPath.of("panel", "cross zones");
    for (int index = 0; index < groups.size(); index++) {
      if (groups.get(index).zones().contains(zone.number())) {
        return Fact.of(new PlanAnswer(place.then(index), new Content.Count(index + 1L)));
      }
    }
    return groups.isEmpty() ? Fact.missing() : Fact.of(new PlanAnswer(place, new Content.Count(0)));
  }

  private Fact<PlanAnswer> follows() {
    List<String> numbers = new ArrayList<>();
    zone.follows().forEach(number -> numbers.add(Integer.toString(number)));
    return numbers.isEmpty()
        ? Fact.missing()
        : PlanAnswers.words(zone.path().then("follows"), numbers);
  }

  private static Fact<PlanAnswer> number(PlanPath place, Fact<Integer> fact) {
    return fact.map(number -> new PlanAnswer(place, new Content.Count(number)));
  }

  private static <T extends Worded> Fact<PlanAnswer> worded(PlanPath place, Fact<T> fact) {
    return fact.map(word -> new PlanAnswer(place, new Content.Word(word.word())));
  }

  private static Fact<PlanAnswer> tooMuch(PlanPath place, String what, String remedy) {
    return Fact.of(new PlanAnswer(place, new Content.TooMuch(what, remedy)));
  }

  private static String compact(String serial) {
    StringBuilder compact = new StringBuilder();
    for (int place = 0; place < serial.length(); place++) {
      char character = serial.charAt(place);
      if (character != ' ' && character != '-' && character != '.') {
        compact.append(character);
      }
    }
    return compact.toString();
  }
}
