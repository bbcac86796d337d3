package keenward.core.rules.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.HabitAction;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.UserRole;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneBuilder;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.core.rules.NotAssessed;
import keenward.core.rules.PlaceOrder;
import org.junit.jupiter.api.Test;

/** Whatever a plan says, the rules judge it without falling over, and say the same thing twice. */
class RandomPlansTest {

  private static final Set<String> SECTIONS =
      Set.of(
          "site",
          "regime",
          "monitoring",
          "people",
          "floors",
          "types",
          "devices",
          "supplies",
          "junctions",
          "cables",
          "panel",
          "partitions",
          "zones",
          "users",
          "service",
          "unplaced");

  @Test
  void judgeAnyPlanTheSameWayTwice() {
    for (long seed = 1; seed <= 400; seed++) {
      SitePlan plan = plan(new Random(seed));
      CheckResult result = check(plan);

      assertThat(check(plan)).as("seed %s", seed).isEqualTo(result);
      assertThat(result.findings())
          .as("seed %s", seed)
          .allSatisfy(finding -> assertSound(finding, plan))
          .isSortedAccordingTo(
              Comparator.comparing(Finding::severity)
                  .thenComparing(Finding::place, PlaceOrder.READING)
                  .thenComparing(Finding::code)
                  .thenComparing(Finding::what));
      assertThat(result.notAssessed()).as("seed %s", seed).allSatisfy(RandomPlansTest::assertSound);
    }
  }

  private static CheckResult check(SitePlan plan) {
    return Checks.run(CheckInput.of(plan).asOf(LocalDate.of(2027, 1, 15)));
  }

  private static void assertSound(Finding finding, SitePlan plan) {
    assertThat(RuleRegistry.find(finding.code())).isPresent();
    assertThat(finding.what()).endsWith(".").doesNotContain("null", "Optional", "[", "  ");
    assertThat(finding.remedy()).endsWith(".").doesNotContain("null", "Optional");
    assertThat(SECTIONS).contains(finding.place().steps().getFirst());
    assertThat(plan.zones().stream().map(Zone::number).toList())
        .containsAll(finding.involved().zones());
  }

  private static void assertSound(NotAssessed notAssessed) {
    assertThat(SECTIONS).contains(notAssessed.place().steps().getFirst());
    assertThat(notAssessed.why())
        .isNotBlank()
        .doesNotContain("null", "Optional")
        .doesNotEndWith(".");
    assertThat(notAssessed.lineToAdd()).isNotBlank();
  }

  private static SitePlan plan(Random random) {
    PlanBuilder plan = PlanBuilder.site();
    for (int index = random.nextInt(3); index > 0; index--) {
      plan.grade(any(random, Standard.values()), 1 + random.nextInt(4));
    }
    boolean hasPartitions = random.nextBoolean();
    if (hasPartitions) {
      plan.partition("A", 1).partition("B", 2, List.of("D1")).commonArea("C", 3, List.of("A", "B"));
    }
    boolean hasFloor = random.nextInt(4) > 0;
    if (hasFloor) {
      plan.floor(
          "Ground",
          floor -> {
            for (int room = 0; room < 4; room++) {
              floor.room("R" + room, any(random, RoomUse.values()), room * 3, 0, room * 3 + 3, 4);
              floor.opening(
                  "Out" + room, any(random, OpeningKind.values()), "R" + room, "outside", 1);
              if (room > 0 && random.nextInt(3) > 0) {
                floor.opening(
                    "In" + room, any(random, OpeningKind.values()), "R" + (room - 1), "R" + room);
              }
            }
          });
    }
    int devices = random.nextInt(8);
    for (int device = 0; device < devices; device++) {
      DeviceKind kind = any(random, DeviceKind.values());
      plan.device("D" + device, kind, details -> device(random, details, hasFloor));
    }
    int zones = random.nextInt(8);
    for (int zone = 1; zone <= zones; zone++) {
      plan.zone(
          zone,
          "Z" + random.nextInt(6),
          any(random, ZoneResponse.values()),
          details -> zone(random, details, devices, hasPartitions));
    }
    if (random.nextBoolean()) {
      plan.supply(
          "Main", supply -> supply.rating("500 mA").battery("7 Ah").batteryFitted("2022-05-01"));
    }
    if (random.nextBoolean()) {
      plan.supply(
          "Spare",
          supply ->
              supply
                  .voltage(any(random, "6.8 V", "13.7 V", "27.4 V", "1 V"))
                  .own(random.nextInt(3) + " mA", "200 mA")
                  .charge("3 A")
                  .totalCurrent(any(random, "0 mA", "1 mA", "1 A"))
                  .battery(any(random, "0 Ah", "0.1 mAh", "7 Ah"))
                  .batteries(1 + random.nextInt(5))
                  .usualTemperature(any(random, "-20 C", "20 C", "45 C", "60 C"))
                  .cutOff(any(random, "0 V", "9 V", "10.5 V", "20 V")));
    }
    if (random.nextBoolean() && devices > 0) {
      plan.person(
          "Bo",
          PlanBuilder.habit(
              "habit", any(random, HabitAction.values()), "Out" + random.nextInt(4), "D0"));
      plan.user(1, "Bo", any(random, UserRole.values()));
    }
    if (zones > 1 && random.nextBoolean()) {
      plan.panel(panel -> panel.crossZone("30 s", 1, 2).entryDelay(1 + random.nextInt(2), "20 s"));
    }
    if (random.nextBoolean()) {
      plan.monitored(random.nextBoolean() ? "1234" : "12A4");
    }
    return plan.build();
  }

  private static void device(Random random, DeviceBuilder device, boolean hasFloor) {
    if (random.nextBoolean()) {
      device.radio("S" + random.nextInt(3));
    } else {
      device.wired();
    }
    if (hasFloor && random.nextInt(3) > 0) {
      device.room("R" + random.nextInt(4));
    }
    if (hasFloor && random.nextBoolean()) {
      device.on("Out" + random.nextInt(4));
    }
    if (random.nextBoolean()) {
      device.inputs("first", "second");
    }
    if (random.nextBoolean()) {
      device.draws("10 mA", "300 mA").replaceAfter("10 y").fitted("2015-01-01");
    }
  }

  private static void zone(Random random, ZoneBuilder zone, int devices, boolean hasPartitions) {
    if (devices > 0 && random.nextInt(4) > 0) {
      zone.device("D" + random.nextInt(devices));
    } else if (random.nextBoolean()) {
      zone.kind(any(random, DeviceKind.values()));
    }
    if (hasPartitions) {
      zone.in(any(random, new String[] {"A", "B", "C"}));
    }
    if (random.nextBoolean()) {
      zone.wiring(any(random, LoopWiring.values()), random.nextBoolean() ? "1 kohm" : "0 ohm");
    }
    if (random.nextInt(3) == 0) {
      zone.liveIn(any(random, ArmingMode.values()));
    }
    Optional.of(100 + random.nextInt(400))
        .filter(code -> random.nextBoolean())
        .ifPresent(zone::event);
    zone.mayBypass(random.nextBoolean());
  }

  @SafeVarargs
  private static <T> T any(Random random, T... values) {
    return values[random.nextInt(values.length)];
  }
}
