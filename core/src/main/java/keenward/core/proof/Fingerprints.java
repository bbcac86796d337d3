package keenward.core.proof;

import java.util.Map;
import keenward.core.plan.CrossZone;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.Fact;
import keenward.core.plan.MagnetFit;
import keenward.core.plan.Partition;
import keenward.core.plan.Point;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Worded;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import keenward.core.quantities.Resistance;
import keenward.core.quantities.Span;
import keenward.core.reporting.ZoneEvents;

/**
 * The fingerprint of a zone: a canonical text of everything that its proof depends on. A test
 * record keeps it (or its hash, made outside core); when an edit changes it, just that proof is
 * stale.
 *
 * <p>It holds the zone, with every option that is entered at the panel, its partitions, its devices
 * with place, aim, serial and wiring, the delays in force that decide when it reports, its
 * cross-zone groups, the panel description and the account. It leaves out notes, reasons, currents,
 * coverage as planned, users and other zones.
 */
public final class Fingerprints {
  private static final String VERSION = "keenward zone fingerprint 1";

  private Fingerprints() {}

  /** The text for a zone of a plan whose panel description is not known. */
  public static String canonical(SitePlan plan, Zone zone) {
    return canonical(plan, zone, Map.of());
  }

  /** The text for a zone of a plan. */
  public static String canonical(SitePlan plan, Zone zone, Map<Setting, Long> panelDefaults) {
    CanonicalText text = new CanonicalText();
    text.line("version", VERSION);
    writeZone(text, plan, zone);
    for (String name : zone.partitions()) {
      plan.findPartition(name).ifPresent(partition -> writePartition(text, partition));
    }
    for (ZoneDevice watched : zone.devices()) {
      writeDevice(text, watched);
    }
    writeSettings(text, zone, Settings.of(plan, panelDefaults));
    for (CrossZone group : plan.panel().crossZones()) {
      if (group.zones().contains(zone.number())) {
        text.list("cross zone", group.zones(), number -> Integer.toString(number));
        text.fact("cross zone window", group.window(), Fingerprints::milliseconds);
      }
    }
    text.fact("panel", plan.panel().description(), CanonicalText::quoted);
    Fact<String> account = Fact.missing();
    text.fact(
        "account",
        plan.monitoring().find().map(monitoring -> monitoring.account()).orElse(account),
        CanonicalText::quoted);
    return text.toString();
  }

  private static void writeZone(CanonicalText text, SitePlan plan, Zone zone) {
    text.line("zone", Integer.toString(zone.number()))
        .words("name", zone.name())
        .words("response", zone.response().word())
        .fact("wiring", zone.wiring(), Worded::word)
        .list("resistors", zone.resistors(), Fingerprints::ohms)
        .fact("contact", zone.contact(), Worded::word)
        .list("live in", zone.liveModes(), Worded::word)
        .fact("entry delay", zone.entryDelay(), number -> Integer.toString(number))
        .fact("bypass", zone.mayBypass(), Fingerprints::yesNo)
        .fact("force arm", zone.mayForceArm(), Fingerprints::yesNo)
        .fact("chime", zone.chime(), Fingerprints::yesNo)
        .fact("swinger limit", zone.swingerLimit(), number -> Integer.toString(number))
        .fact("silent", zone.silent(), Fingerprints::yesNo)
        .list("follows", zone.follows(), number -> Integer.toString(number))
        .line("event", Integer.toString(ZoneEvents.of(plan, zone).code()))
        .line("restore", yesNo(zone.reportsRestore().orElse(true)));
  }

  private static void writePartition(CanonicalText text, Partition partition) {
    text.words("partition", partition.name())
        .line("partition number", Integer.toString(partition.number()))
        .list("common to", partition.commonTo(), CanonicalText::quoted);
  }

  private static void writeDevice(CanonicalText text, ZoneDevice watched) {
    text.words("device kind", watched.kind().word());
    if (watched instanceof ZoneDevice.Fitted fitted) {
      Device device = fitted.device();
      DeviceTraits traits = device.traits();
      text.words("device", device.name())
          .words("input", fitted.inputName())
          .fact("type", device.type(), CanonicalText::quoted)
          .fact("device wiring", traits.wiring(), Worded::word)
          .list("inputs", traits.inputs(), CanonicalText::quoted)
          .fact("latching", traits.latching(), Fingerprints::yesNo)
          .fact("serial", device.serial(), CanonicalText::quoted)
          .fact("opening", device.opening(), CanonicalText::quoted)
          .fact("room", device.room(), CanonicalText::quoted)
          .fact("at", device.at(), Fingerprints::place)
          .fact("ends at", device.endsAt(), Fingerprints::place)
          .fact("magnet gap", device.magnet().flatMap(MagnetFit::gap), Fingerprints::metres)
          .fact("from hinge", device.magnet().flatMap(MagnetFit::fromHinge), Fingerprints::metres)
          .fact("height", device.height(), Fingerprints::metres)
          .fact("bearing", device.bearing(), Fingerprints::degrees);
    }
  }

  private static void writeSettings(CanonicalText text, Zone zone, Settings settings) {
    if (zone.response().isAlwaysLive()) {
      return;
    }
    text.line("setting abort window", Long.toString(settings.get(Setting.ABORT_WINDOW).value()));
    if (zone.response() == ZoneResponse.ENTRY_EXIT) {
      int number = zone.entryDelay().orElse(1);
      text.line(
          "setting entry delay",
          settings.findEntryDelay(number).map(delay -> Long.toString(delay.value())).orElse("-"));
    }
  }

  private static String yesNo(boolean yes) {
    return yes ? "yes" : "no";
  }

  private static String ohms(Resistance resistance) {
    return CanonicalText.number(resistance.ohms());
  }

  private static String place(Point place) {
    return CanonicalText.number(place.xMetres()) + "," + CanonicalText.number(place.yMetres());
  }

  private static String metres(Length length) {
    return CanonicalText.number(length.metres());
  }

  private static String degrees(Angle angle) {
    return CanonicalText.number(angle.degrees());
  }

  private static String milliseconds(Span span) {
    return Long.toString(span.milliseconds());
  }
}
