package keenward.core.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Monitoring;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.RoomUse;
import keenward.core.plan.Setting;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.SignalPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.UserRole;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Span;
import keenward.core.reporting.EventCodes;
import keenward.core.reporting.EventReport;
import keenward.core.reporting.Qualifier;
import keenward.core.reporting.Standing;
import org.junit.jupiter.api.Test;

/** Codes by DC-05 (1999.09); what is tested and how is common practice, no source. */
class TestPlanTest {
  @Test
  void everyInputThatAZoneUsesIsAStep() {
    TestPlan tests = TestPlan.of(cottage());
    assertThat(zoneSteps(tests))
        .extracting(step -> step.subject().label())
        .containsExactlyInAnyOrder(
            "zone 1 Front door, Door contact (contact)",
            "zone 2 Hall, Hall motion",
            "zone 3 Kitchen window, Door contact (terminals)",
            "zone 4 Panic, Bedside button",
            "zone 5 Smoke, Landing smoke (smoke)",
            "zone 6 Gas, carbon monoxide detector",
            "zone 7 Panel lid, lid");
  }

  /** A magnet 24 mm from its contact, on a leaf of 0.9 m, 0.8 m from the hinge: 24 * 0.9 / 0.8. */
  @Test
  void aContactOfWhichItIsKnownWhenItTripsIsOpenedSlowly() {
    SitePlan plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Hall", RoomUse.HALL, 0, 0, 4, 3)
                        .opening("Front door", OpeningKind.DOOR, "Hall", "outside", 1))
            .device(
                "Contact",
                DeviceKind.CONTACT,
                device -> device.on("Front door").gaps("18 mm", "25 mm").magnet("7 mm", "0.8 m"))
            .zone(1, "Door", ZoneResponse.ENTRY_EXIT, zone -> zone.device("Contact"))
            .build();

    assertThat(step(TestPlan.of(plan), "zone 1 Door, Contact").action())
        .isEqualTo(
            "Open Front door slowly: it trips before its edge stands 27 mm open. Then shut it.");
  }

  @Test
  void aZoneStepSaysStateActionKeypadAndSignals() {
    TestStep door = step(TestPlan.of(cottage()), "zone 1 Front door, Door contact (contact)");
    assertThat(door.phase()).isEqualTo(Phase.ARMED);
    assertThat(door.place()).contains(new Place("Ground", "Hall"));
    assertThat(door.precondition())
        .isEqualTo("House armed away, exit time of 60 s over, account on test");
    assertThat(door.action()).isEqualTo("Open Front door by the width of a hand, then shut it.");
    assertThat(door.keypadShows())
        .isEqualTo("At Hall keypad: entry time of 30 s, then alarm of zone 1 \"Front door\"");
    assertThat(door.signals())
        .extracting(ExpectedSignal::text)
        .containsExactly("1134 01 001", "3134 01 001");
    assertThat(door.signals()).allMatch(signal -> signal.account().equals(Optional.of("0471")));
    assertThat(door.signals().getFirst().words())
        .isEqualTo(
            "entry/exit zone, new event, partition 1, zone 1, after the abort window of 30 s (disarm"
                + " only then)");
    assertThat(door.cautions()).containsExactly(Caution.LOUD);
  }

  @Test
  void lifeSafetyAndHoldUpCarryTheirCautions() {
    TestPlan tests = TestPlan.of(cottage());
    TestStep panic = step(tests, "zone 4 Panic, Bedside button");
    assertThat(panic.cautions()).containsExactly(Caution.SENDS_HELP);
    assertThat(panic.keypadShows()).startsWith("Nothing is shown");
    assertThat(panic.signals().getFirst().text()).isEqualTo("1122 01 004");
    TestStep smoke = step(tests, "zone 5 Smoke, Landing smoke (smoke)");
    assertThat(smoke.cautions())
        .containsExactly(
            Caution.SENDS_HELP,
            Caution.LIFE_SAFETY,
            Caution.LOUD,
            Caution.NO_FLAME,
            Caution.LADDER);
    assertThat(smoke.action()).contains("test aerosol");
    assertThat(smoke.signals().getFirst().text()).isEqualTo("1111 01 005");
    TestStep gas = step(tests, "zone 6 Gas, carbon monoxide detector");
    assertThat(gas.cautions()).contains(Caution.TEST_GAS, Caution.LIFE_SAFETY);
    assertThat(gas.signals().getFirst().text()).isEqualTo("1162 01 006");
    assertThat(tests.notes().getFirst()).contains("authority having jurisdiction");
  }

  @Test
  void aFollowerIsTestedAlone() {
    assertThat(step(TestPlan.of(cottage()), "zone 2 Hall, Hall motion").precondition())
        .endsWith("entry zones left shut: alone, it alarms at once");
  }

  @Test
  void aTamperWhileDisarmedMayComeAsTroubleOrAsTheZonesAlarm() {
    TestStep lid = step(TestPlan.of(cottage()), "zone 7 Panel lid, lid");
    assertThat(lid.phase()).isEqualTo(Phase.DISARMED);
    ExpectedSignal signal = lid.signals().getFirst();
    assertThat(signal.text()).isEqualTo("1383 01 007");
    assertThat(signal.words())
        .isEqualTo("sensor tamper, new event, partition 1, zone 7 (or code 137)");
    assertThat(signal.isMetBy(new EventReport(Qualifier.NEW_EVENT, 383, 1, 7))).isTrue();
    assertThat(signal.isMetBy(new EventReport(Qualifier.NEW_EVENT, 137, 1, 7))).isTrue();
    assertThat(signal.isMetBy(new EventReport(Qualifier.NEW_EVENT, 130, 1, 7))).isFalse();
    assertThat(signal.isMetBy(new EventReport(Qualifier.RESTORE, 137, 1, 7))).isFalse();
    assertThat(signal.isMetBy(new EventReport(Qualifier.NEW_EVENT, 137, 2, 7))).isFalse();
    assertThat(signal.isMetBy(new EventReport(Qualifier.NEW_EVENT, 137, 1, 8))).isFalse();
  }

  @Test
  void lidsThatNoZoneUsesAreTestedToo() {
    TestPlan tests = TestPlan.of(cottage());
    assertThat(step(tests, "lid of Door contact").signals().getFirst().text())
        .isEqualTo("1383 01 001");
    assertThat(tests.steps())
        .extracting(step -> step.subject().label())
        .contains("lid of Landing smoke")
        .doesNotContain("lid of Hall motion");
  }

  @Test
  void suppliesRadioPathsAndCodesAreSupervisedItems() {
    TestPlan tests = TestPlan.of(cottage());
    assertThat(texts(step(tests, "mains of Main"))).containsExactly("1301 00 000", "3301 00 000");
    assertThat(step(tests, "mains of Main").cautions()).containsExactly(Caution.MAINS);
    assertThat(step(tests, "mains of Main").action()).contains("Wait 60 min");
    assertThat(texts(step(tests, "battery of Main"))).containsExactly("1311 00 000", "3311 00 000");
    assertThat(texts(step(tests, "mains of Attic"))).containsExactly("1342 00 ...", "3342 00 ...");
    assertThat(texts(step(tests, "radio silence of Door contact")))
        .containsExactly("1381 01 001", "3381 01 001");
    assertThat(texts(step(tests, "low cell of Landing smoke")))
        .containsExactly("1384 01 005", "3384 01 005");
    assertThat(texts(step(tests, "closing and opening of House")))
        .containsExactly("3401 01 001", "1401 01 001");
    assertThat(texts(step(tests, "duress, user 9"))).containsExactly("1121 01 009");
    assertThat(step(tests, "duress, user 9").cautions()).containsExactly(Caution.SENDS_HELP);
    assertThat(texts(step(tests, "path by mobile network")))
        .containsExactly("1350 00 ...", "3350 00 ...");
    assertThat(texts(step(tests, "test signal"))).containsExactly("1601 00 ...");
    assertThat(labels(tests)).doesNotContain("radio silence of Key fob");
  }

  @Test
  void timesAreMeasuredAgainstThoseInForce() {
    TestPlan tests = TestPlan.of(cottage());
    assertThat(step(tests, "exit time").time().orElseThrow().milliseconds()).isEqualTo(60_000);
    assertThat(step(tests, "exit time").time().orElseThrow().source()).contains("CP-01");
    assertThat(step(tests, "entry delay 1").time().orElseThrow().milliseconds()).isEqualTo(30_000);
    assertThat(labels(tests)).contains("abort window").doesNotContain("sounder time");
    TestPlan withPanel = TestPlan.of(threeZones(), Map.of(Setting.EXIT_TIME, 50_000L));
    assertThat(step(withPanel, "exit time").time().orElseThrow().milliseconds()).isEqualTo(50_000);
  }

  @Test
  void anEntryDelayThatIsNotSetIsNotAssessed() {
    SitePlan plan =
        PlanBuilder.site()
            .panel(panel -> panel.entryDelay(1, "30 s"))
            .zone(1, "Door", ZoneResponse.ENTRY_EXIT, zone -> zone.entryDelay(3))
            .build();
    assertThat(TestPlan.of(plan).notAssessed())
        .extracting(MissingFact::lineToAdd)
        .contains("3: ... s");
  }

  @Test
  void theListFollowsTheVisit() {
    TestPlan tests = TestPlan.of(cottage());
    assertThat(tests.steps().getFirst().action())
        .startsWith("Ask Northlight Monitoring (01000 555 020) to put account 0471 on test.");
    assertThat(tests.steps().getLast().subject().label()).isEqualTo("off test");
    assertThat(tests.steps()).extracting(TestStep::phase).isSorted();
    for (int index = 0; index < tests.steps().size(); index++) {
      assertThat(tests.steps().get(index).number()).isEqualTo(index + 1);
    }
    assertThat(labels(tests)).doesNotHaveDuplicates();
  }

  @Test
  void roomsAreWalkedFromThePanelToTheNearest() {
    SitePlan plan =
        PlanBuilder.site()
            .floor("Upper", floor -> floor.room("Attic", RoomUse.LOFT, 0, 0, 3, 3))
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("Far", RoomUse.STORE, 20, 0, 23, 3)
                        .room("Near", RoomUse.STORE, 4, 0, 7, 3)
                        .room("Undrawn", RoomUse.STORE, List.of())
                        .room("Panel room", RoomUse.OFFICE, 0, 0, 3, 3)
                        .room("Middle", RoomUse.STORE, 10, 0, 13, 3))
            .panel(panel -> panel.room("Panel room"))
            .device("A", DeviceKind.MOTION, device -> device.room("Attic"))
            .device("B", DeviceKind.MOTION, device -> device.room("Far"))
            .device("C", DeviceKind.MOTION, device -> device.room("Undrawn"))
            .device("D", DeviceKind.MOTION, device -> device.room("Near"))
            .device("E", DeviceKind.MOTION, device -> device.room("Middle"))
            .device("F", DeviceKind.MOTION, device -> device.room("Panel room"))
            .device("G", DeviceKind.MOTION)
            .zone(1, "A", ZoneResponse.INSTANT, zone -> zone.device("A"))
            .zone(2, "B", ZoneResponse.INSTANT, zone -> zone.device("B"))
            .zone(3, "C", ZoneResponse.INSTANT, zone -> zone.device("C"))
            .zone(4, "D", ZoneResponse.INSTANT, zone -> zone.device("D"))
            .zone(5, "E", ZoneResponse.INSTANT, zone -> zone.device("E"))
            .zone(6, "F", ZoneResponse.INSTANT, zone -> zone.device("F"))
            .zone(7, "G", ZoneResponse.INSTANT, zone -> zone.device("G"))
            .build();
    assertThat(zoneSteps(TestPlan.of(plan)))
        .extracting(step -> step.subject().label().substring(7))
        .containsExactly("F", "D", "E", "B", "C", "A", "G");
  }

  @Test
  void armedZonesAreTestedPartitionByPartition() {
    SitePlan plan =
        PlanBuilder.site()
            .floor(
                "Ground",
                floor ->
                    floor
                        .room("First", RoomUse.SHOP, 0, 0, 3, 3)
                        .room("Second", RoomUse.SHOP, 3, 0, 6, 3))
            .partition("Shop", 1)
            .partition("Flat", 2)
            .device("A", DeviceKind.MOTION, device -> device.room("First"))
            .device("B", DeviceKind.MOTION, device -> device.room("First"))
            .device("C", DeviceKind.MOTION, device -> device.room("Second"))
            .zone(1, "A", ZoneResponse.INSTANT, zone -> zone.in("Flat").device("A"))
            .zone(2, "B", ZoneResponse.INSTANT, zone -> zone.in("Shop").device("B"))
            .zone(3, "C", ZoneResponse.INSTANT, zone -> zone.in("Flat").device("C"))
            .zone(4, "D", ZoneResponse.FIRE, zone -> zone.in("Flat").device("C"))
            .build();
    assertThat(zoneSteps(TestPlan.of(plan)))
        .extracting(step -> step.subject().label())
        .containsExactly("zone 4 D, C", "zone 2 B", "zone 1 A", "zone 3 C");
  }

  @Test
  void likeDevicesOfOneZoneAreToldApart() {
    SitePlan plan =
        PlanBuilder.site()
            .zone(
                1,
                "Windows",
                ZoneResponse.PERIMETER,
                zone -> zone.kind(DeviceKind.CONTACT).kind(DeviceKind.CONTACT))
            .build();
    assertThat(labels(TestPlan.of(plan)))
        .contains("zone 1 Windows, contact", "zone 1 Windows, contact 2");
  }

  @Test
  void threeZonesAreEnoughForATestPlan() {
    TestPlan tests = TestPlan.of(threeZones());
    assertThat(zoneSteps(tests)).hasSize(3);
    assertThat(tests.notAssessed())
        .extracting(MissingFact::message)
        .containsExactly(
            "not assessed: under which account the centre must receive the signals; add"
                + " `monitoring: { account: ... }`",
            "not assessed: how zone 3 is made to respond; add `device: ...`",
            "not assessed: tests of mains failure and battery; add"
                + " `supplies: { Main: { battery: { capacity: ... Ah } } }`",
            "not assessed: the tamper of the panel's enclosure; add"
                + " `4: { name: Panel lid, response: tamper, device: lid }`");
    assertThat(zoneSteps(tests).getFirst().signals().getFirst().account()).isEmpty();
  }

  @Test
  void aCentreThatWantsLettersIsNotAssessed() {
    SitePlan plan = PlanBuilder.site().monitored("0471", SignalFormat.DC_03, List.of()).build();
    assertThat(TestPlan.of(plan).notAssessed())
        .extracting(MissingFact::lineToAdd)
        .contains("format: dc-05", "paths: [ip, mobile]", "openings and closings: yes");
  }

  @Test
  void crossZonedZonesNeedTheirPartner() {
    SitePlan plan =
        PlanBuilder.site()
            .panel(panel -> panel.crossZone("60 s", 1, 2))
            .zone(1, "West", ZoneResponse.INSTANT, zone -> zone.kind(DeviceKind.MOTION))
            .zone(2, "East", ZoneResponse.INSTANT, zone -> zone.kind(DeviceKind.MOTION))
            .build();
    assertThat(zoneSteps(TestPlan.of(plan)).getFirst().action())
        .endsWith(
            "Cross-zoned: do the same at one of zones 2 within 60 s; alone it sends no alarm.");
  }

  @Test
  void aCommonAreaIsArmedThroughItsPartitions() {
    SitePlan plan =
        PlanBuilder.site()
            .partition("Shop", 1)
            .partition("Flat", 2)
            .commonArea("Hall", 3, List.of("Shop", "Flat"))
            .zone(1, "Hall", ZoneResponse.INSTANT, zone -> zone.in("Hall").kind(DeviceKind.MOTION))
            .build();
    TestStep hall = zoneSteps(TestPlan.of(plan)).getFirst();
    assertThat(hall.precondition()).startsWith("Hall armed by arming Shop and Flat, exit time");
    assertThat(hall.signals().getFirst().text()).isEqualTo("1132 03 001");
  }

  @Test
  void everyResponseAndDeviceGivesASoundStep() {
    PlanBuilder builder = PlanBuilder.site().monitored("0471");
    int number = 1;
    for (ZoneResponse response : ZoneResponse.values()) {
      for (DeviceKind kind : DeviceKind.values()) {
        builder.zone(number, "Zone " + number, response, zone -> zone.kind(kind));
        number++;
      }
    }
    TestPlan tests = TestPlan.of(builder.build());
    assertThat(zoneSteps(tests)).hasSize(number - 1);
    for (TestStep step : tests.steps()) {
      assertThat(step.action()).isNotBlank().endsWith(".");
      for (ExpectedSignal signal : step.signals()) {
        assertThat(EventCodes.get(signal.code()).standing()).isEqualTo(Standing.USUAL);
        signal.otherCodes().forEach(code -> assertThat(EventCodes.find(code)).isPresent());
      }
    }
  }

  @Test
  void aLidThatAZoneUsesIsTestedOnceAsThatZone() {
    SitePlan plan =
        PlanBuilder.site()
            .device("Contact", DeviceKind.CONTACT, contact -> contact.inputs("contact", "lid"))
            .zone(1, "Door", ZoneResponse.PERIMETER, zone -> zone.device("Contact"))
            .zone(2, "Lid", ZoneResponse.TAMPER, zone -> zone.device("Contact", "lid"))
            .build();
    assertThat(labels(TestPlan.of(plan)))
        .contains("zone 2 Lid, Contact (lid)")
        .doesNotContain("lid of Contact");
    assertThat(step(TestPlan.of(plan), "zone 2 Lid, Contact (lid)").action())
        .isEqualTo("Open the lid of Contact, then shut it.");
  }

  @Test
  void aLaterInputIsNamedInTheAction() {
    SitePlan plan =
        PlanBuilder.site()
            .device("Box", DeviceKind.SHOCK, box -> box.inputs("one", "two").mountedAt("2 m"))
            .zone(1, "Wall", ZoneResponse.INSTANT, zone -> zone.device("Box", "two"))
            .build();
    assertThat(zoneSteps(TestPlan.of(plan)).getFirst().action()).endsWith("Use its input \"two\".");
  }

  @Test
  void aloneAPathCannotReportItsOwnLoss() {
    SitePlan plan =
        PlanBuilder.site()
            .monitoring(
                new Monitoring(
                    Fact.missing(),
                    Fact.missing(),
                    Fact.of("0471"),
                    Fact.missing(),
                    List.of(SignalPath.TELEPHONE),
                    Fact.of(Span.parse("1 h").find().orElseThrow()),
                    Fact.missing(),
                    Fact.of(false),
                    Fact.missing(),
                    Fact.missing(),
                    List.of()))
            .build();
    TestPlan tests = TestPlan.of(plan);
    TestStep path = step(tests, "path by telephone line");
    assertThat(path.action()).contains("notice by itself within its polling interval of 1 h");
    assertThat(texts(path)).containsExactly("3351 00 ...");
    assertThat(path.signals().getFirst().otherCodes()).containsExactly(350, 352);
    assertThat(labels(tests)).doesNotContain("closing and opening of System");
    assertThat(tests.steps().getFirst().action())
        .startsWith("Ask the monitoring centre to put account 0471 on test.");
  }

  @Test
  void closingsAreTestedByAUserWhoMayUseThePartition() {
    SitePlan plan =
        PlanBuilder.site()
            .monitoring(
                new Monitoring(
                    Fact.missing(),
                    Fact.missing(),
                    Fact.of("0471"),
                    Fact.missing(),
                    List.of(SignalPath.IP),
                    Fact.missing(),
                    Fact.missing(),
                    Fact.of(true),
                    Fact.missing(),
                    Fact.missing(),
                    List.of()))
            .partition("Shop", 1)
            .partition("Flat", 2)
            .commonArea("Hall", 3, List.of("Shop", "Flat"))
            .user(1, "Technician", UserRole.TECHNICIAN)
            .user(2, "Cleaner", UserRole.USER, List.of("Shop"))
            .user(3, "Nan", UserRole.USER, List.of("Flat"))
            .build();
    TestPlan tests = TestPlan.of(plan);
    assertThat(texts(step(tests, "closing and opening of Shop")))
        .containsExactly("3401 01 002", "1401 01 002");
    assertThat(texts(step(tests, "closing and opening of Flat")))
        .containsExactly("3401 02 003", "1401 02 003");
    assertThat(labels(tests)).doesNotContain("closing and opening of Hall");
  }

  @Test
  void aKeySwitchReportsUnderANumberThatThePlanDoesNotTell() {
    SitePlan plan =
        PlanBuilder.site()
            .zone(
                4,
                "Gate switch",
                ZoneResponse.KEY_SWITCH,
                zone -> zone.kind(DeviceKind.KEY_SWITCH_CONTACT))
            .build();
    TestStep gate = zoneSteps(TestPlan.of(plan)).getFirst();
    assertThat(gate.phase()).isEqualTo(Phase.DISARMED);
    assertThat(texts(gate)).containsExactly("3409 01 ...", "1409 01 ...");
    assertThat(gate.signals().getFirst().isMetBy(new EventReport(Qualifier.RESTORE, 409, 1, 17)))
        .isTrue();
  }

  @Test
  void aSwingerLimitIsToldBeforeStarting() {
    assertThat(TestPlan.of(cottage()).notes()).anyMatch(note -> note.startsWith("After 2 alarms"));
    assertThat(TestPlan.of(threeZones()).notes()).noneMatch(note -> note.startsWith("After"));
    assertThat(
            TestPlan.of(PlanBuilder.site().panel(panel -> panel.swingerLimit(1)).build()).notes())
        .anyMatch(note -> note.startsWith("After 1 alarm of"));
  }

  @Test
  void withSoundersTheirTimeIsMeasured() {
    SitePlan plan =
        PlanBuilder.site()
            .panel(panel -> panel.sounderTime("4 min"))
            .device("Bell", DeviceKind.SIREN)
            .zone(1, "Door", ZoneResponse.ENTRY_EXIT)
            .build();
    TestStep sounder = step(TestPlan.of(plan), "sounder time");
    assertThat(sounder.time().orElseThrow().milliseconds()).isEqualTo(240_000);
    assertThat(sounder.cautions()).containsExactly(Caution.LOUD);
    SitePlan alwaysLive = PlanBuilder.site().zone(1, "Fire", ZoneResponse.FIRE).build();
    assertThat(labels(TestPlan.of(alwaysLive))).doesNotContain("exit time");
  }

  @Test
  void cautionsAndPhasesAreWorded() {
    for (Caution caution : Caution.values()) {
      assertThat(caution.text()).endsWith(".");
    }
    for (Phase phase : Phase.values()) {
      assertThat(phase.words()).isNotBlank();
    }
  }

  @Test
  void aZoneThatDoesNotRestoreExpectsNoRestore() {
    SitePlan plan =
        PlanBuilder.site()
            .zone(1, "Door", ZoneResponse.PERIMETER, zone -> zone.restore(false))
            .build();
    assertThat(texts(zoneSteps(TestPlan.of(plan)).getFirst())).containsExactly("1131 01 001");
  }

  private static SitePlan threeZones() {
    return PlanBuilder.site("Quayside Bakery")
        .zone(1, "Shop door", ZoneResponse.ENTRY_EXIT, zone -> zone.kind(DeviceKind.CONTACT))
        .zone(2, "Shop motion", ZoneResponse.FOLLOWER, zone -> zone.kind(DeviceKind.MOTION))
        .zone(3, "Counter button", ZoneResponse.HOLD_UP)
        .build();
  }

  private static SitePlan cottage() {
    return PlanBuilder.site("Cottage")
        .regime(Standard.CP_01, "2010")
        .monitoring(
            new Monitoring(
                Fact.of("Northlight Monitoring"),
                Fact.of("01000 555 020"),
                Fact.of("0471"),
                Fact.of(SignalFormat.DC_05),
                List.of(SignalPath.IP, SignalPath.MOBILE),
                Fact.missing(),
                Fact.of(Span.parse("24 h").find().orElseThrow()),
                Fact.of(true),
                Fact.missing(),
                Fact.missing(),
                List.of()))
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Hall", RoomUse.HALL, 0, 0, 4, 4)
                    .opening("Front door", OpeningKind.DOOR, "Hall", "outside"))
        .supply("Main", main -> main.battery("7 Ah"))
        .supply("Attic", attic -> attic.battery("2.3 Ah"))
        .panel(panel -> panel.room("Hall").supply("Main"))
        .partition("House", 1, List.of("Hall keypad"))
        .device("Hall keypad", DeviceKind.KEYPAD)
        .device(
            "Door contact",
            DeviceKind.CONTACT,
            contact ->
                contact
                    .radio("1")
                    .inputs("contact", "terminals", "lid")
                    .room("Hall")
                    .on("Front door"))
        .device("Hall motion", DeviceKind.MOTION, motion -> motion.wired().room("Hall"))
        .device("Bedside button", DeviceKind.HOLD_UP_BUTTON)
        .device("Key fob", DeviceKind.FOB, fob -> fob.radio("3"))
        .device(
            "Landing smoke",
            DeviceKind.SMOKE,
            smoke -> smoke.radio("2").inputs("smoke", "lid").mountedAt("2.4 m"))
        .zone(1, "Front door", ZoneResponse.ENTRY_EXIT, zone -> zone.device("Door contact"))
        .zone(2, "Hall", ZoneResponse.FOLLOWER, zone -> zone.device("Hall motion"))
        .zone(
            3,
            "Kitchen window",
            ZoneResponse.PERIMETER,
            zone -> zone.device("Door contact", "terminals"))
        .zone(4, "Panic", ZoneResponse.HOLD_UP, zone -> zone.device("Bedside button"))
        .zone(5, "Smoke", ZoneResponse.FIRE, zone -> zone.device("Landing smoke"))
        .zone(
            6,
            "Gas",
            ZoneResponse.CARBON_MONOXIDE,
            zone -> zone.kind(DeviceKind.CARBON_MONOXIDE_DETECTOR))
        .zone(
            7,
            "Panel lid",
            ZoneResponse.TAMPER,
            zone -> zone.kind(DeviceKind.LID).wiring(LoopWiring.SINGLE_RESISTOR, "4.7 kohm"))
        .user(1, "Ines", UserRole.MASTER)
        .user(9, "Under duress", UserRole.DURESS)
        .build();
  }

  private static List<TestStep> zoneSteps(TestPlan tests) {
    return tests.steps().stream()
        .filter(step -> step.subject() instanceof TestSubject.ZoneInput)
        .toList();
  }

  private static List<String> labels(TestPlan tests) {
    return tests.steps().stream().map(step -> step.subject().label()).toList();
  }

  private static List<String> texts(TestStep step) {
    return step.signals().stream().map(ExpectedSignal::text).toList();
  }

  private static TestStep step(TestPlan tests, String label) {
    return tests.steps().stream()
        .filter(step -> step.subject().label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError(label + " not in " + labels(tests)));
  }
}
