package keenward.inbrowser;

import java.util.List;
import java.util.Set;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.EntryDelays;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.RehearsalOptions;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.Timings;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;
import keenward.core.rehearsal.ZoneTrait;

/** A thought-up studio of six zones with most kinds of response. Event codes are DC-05's. */
final class SampleSystem {

  private static final int SECOND = 10;

  private SampleSystem() {}

  static SystemModel model() {
    return new SystemModel(
        List.of(PartitionModel.of(1, "Studio")),
        List.of(
            burglary(1, "Street door", ZoneResponse.ENTRY_EXIT, 134)
                .delayed(EntryDelays.always(30 * SECOND))
                .with(ZoneTrait.CHIME),
            burglary(2, "Passage motion", ZoneResponse.FOLLOWER, 132),
            burglary(3, "Yard window", ZoneResponse.PERIMETER, 131).with(ZoneTrait.FORCEABLE),
            burglary(4, "Kiln room", ZoneResponse.INSTANT, 132).swingerLimit(2),
            ZoneModel.of(5, "Desk button", ZoneResponse.HOLD_UP, 122).with(ZoneTrait.SILENT),
            ZoneModel.of(6, "Smoke loft", ZoneResponse.FIRE, 111).with(ZoneTrait.LATCHING)),
        List.of(UserModel.of(1, "Potter", 0)),
        List.of(new KeypadModel("Hall", KeypadModel.Kind.KEYPAD, Set.of(0))),
        List.of(),
        Timings.standard().with(TimingSetting.SOUNDER_TIME, 240 * SECOND),
        RehearsalOptions.standard());
  }

  private static ZoneModel burglary(int number, String name, ZoneResponse response, int event) {
    return ZoneModel.of(number, name, response, event)
        .with(ZoneTrait.BYPASSABLE)
        .with(ZoneTrait.ABORTABLE);
  }
}
