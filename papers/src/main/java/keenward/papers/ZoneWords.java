package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.CrossZone;
import keenward.core.plan.Fact;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.Opening;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Quantity;
import keenward.core.quantities.Span;

/** A zone in words. */
final class ZoneWords {

  private final SitePlan plan;
  private final Zone zone;

  ZoneWords(SitePlan plan, Zone zone) {
    this.plan = plan;
    this.zone = zone;
  }

  String devices() {
    return Say.list(
        zone.devices().stream()
            .map(each ->
                switch (each) {
                  case ZoneDevice.Unplaced unplaced -> unplaced.kind().word();
                  case ZoneDevice.Fitted fitted ->
                      fitted.device().name()
                          + (fitted.inputName().isEmpty() ? "" : ", input " + fitted.inputName());
                })
            .toList());
  }

  String rooms() {
    return Say.list(
        fitted().flatMap(each -> each.device().room().find().stream()).distinct().toList());
  }

  /** Wired or radio, and the serial of a radio device. */
  String connection() {
    List<String> words = new ArrayList<>();
    fitted()
        .forEach(each -> {
          String wiring = Say.words(each.device().traits().wiring());
          String serial = each.device().serial().find().map(number -> " " + number).orElse("");
          words.add(wiring.equals(Say.NOTHING) ? serial.strip() : wiring + serial);
        });
    return Say.list(words.stream().filter(word -> !word.isEmpty()).distinct().toList());
  }

  boolean isRadio() {
    return fitted().anyMatch(each -> each.device().traits().wiring().equals(Fact.of(Wiring.RADIO)));
  }

  String loop() {
    String wiring = Say.words(zone.wiring());
    if (zone.resistors().isEmpty()) {
      return wiring;
    }
    String values = resistors();
    return zone.wiring().equals(Fact.of(LoopWiring.NONE)) ? values : wiring + ", " + values;
  }

  /** Their values; several of one value as {@code 2 × 4.7 kohm}. */
  String resistors() {
    List<String> values = zone.resistors().stream().map(Quantity::written).toList();
    return values.size() > 1 && values.stream().distinct().count() == 1
        ? values.size() + " × " + values.getFirst()
        : Say.list(values);
  }

  String contact() {
    return Say.words(zone.contact());
  }

  String liveIn() {
    return zone.response().isAlwaysLive()
        ? "always"
        : String.join(", ", zone.liveModes().stream().map(ArmingMode::word).toList());
  }

  /** Entry delay, or the zones it follows. */
  String route() {
    List<String> words = new ArrayList<>();
    zone.entryDelay()
        .find()
        .ifPresent(number ->
            words.add(
                "entry delay "
                    + number
                    + Optional.ofNullable(plan.panel().entryDelays().get(number))
                        .map(Span::written)
                        .map(time -> ", " + time)
                        .orElse("")));
    if (!zone.follows().isEmpty()) {
      words.add("follows " + Say.and(zone.follows().stream().map(String::valueOf).toList()));
    }
    return words.isEmpty() ? Say.NOTHING : String.join("; ", words);
  }

  /** What it may do beside alarm. */
  String options() {
    List<String> words = new ArrayList<>();
    says(words, zone.mayBypass(), "may be bypassed", "no bypass");
    says(words, zone.mayForceArm(), "may arm while open", "");
    says(words, zone.chime(), "chime", "");
    says(words, zone.silent(), "silent", "");
    zone.swingerLimit().find().ifPresent(limit -> words.add("swinger limit " + limit));
    for (CrossZone group : plan.panel().crossZones()) {
      if (group.zones().contains(zone.number())) {
        List<String> others =
            group.zones().stream()
                .filter(number -> number != zone.number())
                .map(String::valueOf)
                .toList();
        words.add(
            "cross-zone with "
                + Say.and(others)
                + " within "
                + Say.fact(group.window().map(Span::written)));
      }
    }
    return words.isEmpty() ? Say.NOTHING : String.join(", ", words);
  }

  /** Openings that its devices guard. */
  List<Opening> openings() {
    List<String> names = fitted().flatMap(each -> each.device().opening().find().stream()).toList();
    return plan.openings().filter(opening -> names.contains(opening.name())).toList();
  }

  Stream<ZoneDevice.Fitted> fitted() {
    return zone.devices().stream()
        .filter(ZoneDevice.Fitted.class::isInstance)
        .map(ZoneDevice.Fitted.class::cast);
  }

  private static void says(List<String> words, Fact<Boolean> fact, String yes, String no) {
    fact.find()
        .map(value -> value ? yes : no)
        .filter(word -> !word.isEmpty())
        .ifPresent(words::add);
  }
}
