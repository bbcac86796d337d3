package keenward.core.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.PanelBuilder;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Setting;
import keenward.core.plan.SitePlan;
import keenward.core.plan.UserRole;
import keenward.core.plan.ZoneBuilder;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

class FingerprintsTest {
  @Test
  void theTextIsReadableAndStable() {
    assertThat(of(plan(zone -> {}, device -> {}, panel -> {}, "0471"), 1))
        .isEqualTo(
            """
            version=keenward zone fingerprint 1
            zone=1
            name="Door"
            response="entry-exit"
            wiring=double resistor
            resistors=[4700,4700]
            contact=-
            live in=[away,stay,night]
            entry delay=1
            bypass=-
            force arm=-
            chime=-
            swinger limit=-
            silent=-
            follows=[]
            event=134
            restore=yes
            partition="House"
            partition number=1
            common to=[]
            device kind="contact"
            device="Contact"
            input="contact"
            type=-
            device wiring=wired
            inputs=["contact","lid"]
            latching=-
            serial=?
            opening="Front door"
            room="Hall"
            at=1.5,2
            ends at=-
            magnet gap=-
            from hinge=-
            height=-
            bearing=-
            setting abort window=30000
            setting entry delay=30000
            panel=-
            account="0471"
            """);
  }

  @Test
  void whateverTheProofDependsOnChangesIt() {
    String before = of(plan(zone -> {}, device -> {}, panel -> {}, "0471"), 1);
    Set<String> seen = new HashSet<>(Set.of(before));
    List<Consumer<ZoneBuilder>> zoneEdits =
        List.of(
            zone -> zone.wiring(LoopWiring.SINGLE_RESISTOR, "4.7 kohm"),
            zone -> zone.wiring(LoopWiring.DOUBLE_RESISTOR, "4.7 kohm", "2.2 kohm"),
            zone -> zone.entryDelay(2),
            zone -> zone.event(131),
            zone -> zone.silent(true),
            zone -> zone.mayBypass(true),
            zone -> zone.mayForceArm(true),
            zone -> zone.in("House", "Shed"),
            zone -> zone.in("Shed"),
            zone -> zone.restore(false),
            zone -> zone.kind(DeviceKind.CONTACT));
    for (Consumer<ZoneBuilder> edit : zoneEdits) {
      assertThat(seen.add(of(plan(edit, device -> {}, panel -> {}, "0471"), 1))).isTrue();
    }
    List<Consumer<DeviceBuilder>> deviceEdits =
        List.of(
            device -> device.radio("17"),
            device -> device.radio("18"),
            device -> device.inputs("lid", "contact"),
            device -> device.on("Back door"),
            device -> device.room("Porch"),
            device -> device.at(1.5, 2.1),
            device -> device.endsAt(3, 2),
            device -> device.magnet("6 mm", "0.8 m"),
            device -> device.magnet("7 mm", "0.8 m"),
            device -> device.magnet("6 mm", "0.7 m"),
            device -> device.bearing("90 deg"),
            device -> device.mountedAt("2 m"));
    for (Consumer<DeviceBuilder> edit : deviceEdits) {
      assertThat(seen.add(of(plan(zone -> {}, edit, panel -> {}, "0471"), 1))).isTrue();
    }
    List<Consumer<PanelBuilder>> panelEdits =
        List.of(
            panel -> panel.abortWindow("20 s"),
            panel -> panel.entryDelay(1, "40 s"),
            panel -> panel.crossZone("60 s", 1, 2),
            panel -> panel.crossZone("50 s", 1, 2));
    for (Consumer<PanelBuilder> edit : panelEdits) {
      assertThat(seen.add(of(plan(zone -> {}, device -> {}, edit, "0471"), 1))).isTrue();
    }
    assertThat(seen.add(of(plan(zone -> {}, device -> {}, panel -> {}, "0472"), 1))).isTrue();
  }

  @Test
  void whatItDoesNotDependOnLeavesIt() {
    SitePlan plan = plan(zone -> {}, device -> {}, panel -> {}, "0471");
    SitePlan edited =
        base(
                zone -> zone.reason("asked for"),
                device -> device.draws("1 mA", "2 mA"),
                panel -> panel.exitTime("90 s"),
                "0471")
            .zone(3, "Attic", ZoneResponse.INSTANT)
            .user(7, "Odile", UserRole.USER)
            .supply("Main", main -> main.battery("7 Ah"))
            .build();
    assertThat(of(edited, 1)).isEqualTo(of(plan, 1));
    assertThat(of(edited, 2)).isEqualTo(of(plan, 2));
  }

  @Test
  void theSameValueWrittenOtherwiseLeavesIt() {
    SitePlan plan = plan(zone -> {}, device -> device.mountedAt("2 m"), panel -> {}, "0471");
    SitePlan other =
        plan(
            zone -> zone.wiring(LoopWiring.DOUBLE_RESISTOR, "4700 ohm", "4.70 kohm"),
            device -> device.mountedAt("200 cm"),
            panel -> panel.entryDelay(1, "0.5 min"),
            "0471");
    assertThat(of(other, 1)).isEqualTo(of(plan, 1));
  }

  @Test
  void aDefaultOfThePanelCountsWhereThePlanSaysNothing() {
    SitePlan plan = PlanBuilder.site().zone(1, "Door", ZoneResponse.ENTRY_EXIT).build();
    assertThat(
            Fingerprints.canonical(
                plan, plan.zones().getFirst(), Map.of(Setting.ENTRY_DELAY, 45_000L)))
        .contains("setting entry delay=45000");
  }

  @Test
  void textsCannotForgeOtherLines() {
    SitePlan plan = PlanBuilder.site().zone(1, "Door\"\nrestore=no\\", ZoneResponse.FIRE).build();
    assertThat(of(plan, 1)).contains("name=\"Door\\\"\\nrestore=no\\\\\"\n");
  }

  private static String of(SitePlan plan, int zone) {
    return Fingerprints.canonical(plan, plan.findZone(zone).orElseThrow());
  }

  private static SitePlan plan(
      Consumer<ZoneBuilder> zone,
      Consumer<DeviceBuilder> device,
      Consumer<PanelBuilder> panel,
      String account) {
    return base(zone, device, panel, account).build();
  }

  private static PlanBuilder base(
      Consumer<ZoneBuilder> zone,
      Consumer<DeviceBuilder> device,
      Consumer<PanelBuilder> panel,
      String account) {
    Consumer<PanelBuilder> usual =
        each -> each.entryDelay(1, "30 s").entryDelay(2, "60 s").abortWindow("30 s");
    Consumer<DeviceBuilder> contact =
        each ->
            each.wired()
                .serialUnknown()
                .inputs("contact", "lid")
                .room("Hall")
                .on("Front door")
                .at(1.5, 2);
    Consumer<ZoneBuilder> door =
        each ->
            each.device("Contact")
                .entryDelay(1)
                .wiring(LoopWiring.DOUBLE_RESISTOR, "4.7 kohm", "4.7 kohm");
    return PlanBuilder.site()
        .monitored(account)
        .panel(usual.andThen(panel))
        .partition("House", 1)
        .partition("Shed", 2)
        .device("Contact", DeviceKind.CONTACT, contact.andThen(device))
        .zone(1, "Door", ZoneResponse.ENTRY_EXIT, door.andThen(zone))
        .zone(2, "Window", ZoneResponse.PERIMETER);
  }
}
