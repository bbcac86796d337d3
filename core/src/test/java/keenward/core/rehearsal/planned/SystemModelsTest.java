package keenward.core.rehearsal.planned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Standard;
import keenward.core.plan.UserRole;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.CrossGroup;
import keenward.core.rehearsal.EntryDelays;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.Option;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.rehearsal.ZoneTrait;
import org.junit.jupiter.api.Test;

class SystemModelsTest {

  private static final SystemModel WORKSHOP = SystemModels.from(Plans.workshop()).model();

  @Test
  void takesEveryTimeFromThePlan() {
    assertThat(WORKSHOP.timings().of(TimingSetting.EXIT_TIME)).isEqualTo(500);
    assertThat(WORKSHOP.timings().of(TimingSetting.SOUNDER_TIME)).isEqualTo(2400);
    assertThat(WORKSHOP.timings().of(TimingSetting.ABORT_WINDOW)).isEqualTo(200);
    assertThat(WORKSHOP.timings().of(TimingSetting.RADIO_SUPERVISION)).isEqualTo(72_000);
    assertThat(zone(1).delays()).isEqualTo(EntryDelays.always(300));
    assertThat(zone(6).delays()).isEqualTo(EntryDelays.always(450));
    assertThat(zone(1).swingerLimit()).isEqualTo(3);
    assertThat(WORKSHOP.crossGroups()).containsExactly(new CrossGroup(List.of(3, 4), 400));
  }

  @Test
  void takesWhatThePlanLeavesOutFromItsRegime() {
    SystemModel model =
        SystemModels.from(
                PlanBuilder.site()
                    .regime(Standard.CP_01, "2010")
                    .zone(1, "Door", ZoneResponse.ENTRY_EXIT)
                    .build())
            .model();
    // CP-01 defaults, reference/cp01.csv: abort window 30 s, swinger 2 trips, restart and unvacated
    // premises on.
    assertThat(model.timings().of(TimingSetting.ABORT_WINDOW)).isEqualTo(300);
    assertThat(model.zones().getFirst().swingerLimit()).isEqualTo(2);
    assertThat(model.options().has(Option.EXIT_RESTART)).isTrue();
    assertThat(model.options().has(Option.AUTOMATIC_STAY)).isTrue();
  }

  @Test
  void givesAFollowerItsOwnDelayOnlyWherePeopleWalkAboutInside() {
    assertThat(zone(5).delays()).isEqualTo(new EntryDelays(0, 450, 450));
    assertThat(zone(5).liveIn()).isEqualTo(Set.of(ArmingMode.AWAY, ArmingMode.NIGHT));
    assertThat(zone(2).releasedBy()).containsExactly(0);
  }

  @Test
  void knowsWhatEachZoneMayDo() {
    assertThat(zone(1).traits())
        .containsExactlyInAnyOrder(
            ZoneTrait.ABORTABLE, ZoneTrait.BYPASSABLE, ZoneTrait.RESTORE_REPORTED);
    assertThat(zone(6).traits()).contains(ZoneTrait.RADIO);
    assertThat(zone(7).traits())
        .containsExactlyInAnyOrder(ZoneTrait.RADIO, ZoneTrait.LATCHING, ZoneTrait.RESTORE_REPORTED);
    assertThat(zone(8).traits())
        .containsExactlyInAnyOrder(ZoneTrait.SILENT, ZoneTrait.RESTORE_REPORTED);
    assertThat(zone(9).traits()).contains(ZoneTrait.FORCEABLE).doesNotContain(ZoneTrait.BYPASSABLE);
    assertThat(zone(10).traits()).isEmpty();
  }

  @Test
  void takesEventCodesFromResponseAndDevice() {
    assertThat(List.of(1, 2, 3, 7, 8))
        .extracting(number -> zone(number).eventCode())
        .containsExactly(134, 132, 132, 111, 122);
  }

  @Test
  void makesAnAreaForZonesThatSeveralPartitionsShare() {
    assertThat(WORKSHOP.partitions())
        .containsExactly(
            PartitionModel.of(1, "Workshop"),
            PartitionModel.of(2, "Loft"),
            PartitionModel.common(3, "Hall", 0, 1),
            PartitionModel.common(1, "Workshop and Loft", 0, 1));
    assertThat(zone(6).partition()).isEqualTo(2);
    assertThat(zone(9).partition()).isEqualTo(3);
  }

  @Test
  void givesUsersWhatTheirRoleAllows() {
    assertThat(WORKSHOP.users())
        .containsExactly(
            new UserModel(1, "Rosa", Set.of(0, 1, 2), Set.of(0, 1, 2), true, false, false),
            new UserModel(2, "Apprentice", Set.of(0), Set.of(), false, false, false),
            new UserModel(3, "Pressed", Set.of(0), Set.of(0), false, true, false),
            new UserModel(4, "Fitter", Set.of(), Set.of(), false, false, true));
  }

  @Test
  void findsWhichPartitionsAKeypadServes() {
    assertThat(WORKSHOP.keypads())
        .containsExactly(
            new KeypadModel("Passage keys", KeypadModel.Kind.KEYPAD, Set.of(0, 2)),
            new KeypadModel("Loft keys", KeypadModel.Kind.KEYPAD, Set.of(1, 2)),
            new KeypadModel("Blue fob", KeypadModel.Kind.FOB, Set.of(0, 2)));
  }

  @Test
  void saysWhatItTookWhereThePlanIsSilent() {
    PlannedSystem kiosk = SystemModels.from(Plans.threeZones());
    assertThat(kiosk.model().users()).extracting(UserModel::name).containsExactly("Somebody");
    assertThat(kiosk.assumptions())
        .extracting(Assumption::text)
        .containsExactly("no users are named: somebody who may do everything is taken");
    PlannedSystem odd =
        SystemModels.from(
            PlanBuilder.site()
                .panel(panel ->
                    panel
                        .exitTime("60.25 s")
                        .entryDelay(1, "20 s")
                        .crossZone("60 s", 1, 77)
                        .sounderTime("0 s"))
                .zone(1, "Door", ZoneResponse.ENTRY_EXIT, zone -> zone.entryDelay(4))
                .user(1, "Rosa", UserRole.MASTER)
                .build());
    assertThat(odd.assumptions())
        .extracting(each -> each.place() + ": " + each.text())
        .containsExactlyInAnyOrder(
            "zones / 1 / entry delay: there is no entry delay 4; 20 s of entry delay 1 is taken",
            "panel / cross zones / 0: zone 77 is left out of the cross-zone group: there is no such zone",
            "panel / exit time: 60250 ms is rehearsed as 603 tenths of a second",
            "panel / sounder time: sounder time of 0 is rehearsed as a tenth of a second");
    assertThat(odd.model().zones().getFirst().delays()).isEqualTo(EntryDelays.always(200));
  }

  private static ZoneModel zone(int number) {
    return WORKSHOP.zones().get(number - 1);
  }
}
