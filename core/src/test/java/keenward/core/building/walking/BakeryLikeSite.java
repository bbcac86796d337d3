package keenward.core.building.walking;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.RoomUse.OFFICE;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;

import keenward.core.plan.PlanBuilder;

/** A yard door into a passage, from which an office and a store open; keypad in the office. */
public final class BakeryLikeSite {

  private BakeryLikeSite() {}

  /** The site with its entry door as zone 1, and no other zone. */
  public static PlanBuilder plan() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Passage", HALL, 0, 0, 2, 10)
                    .room("Office", OFFICE, 2, 0, 6, 5)
                    .room("Store", STORE, 2, 5, 6, 10)
                    .opening("Yard door", DOOR, "Passage", "outside", 1)
                    .opening("Office door", DOOR, "Passage", "Office")
                    .opening("Store door", DOOR, "Passage", "Store"))
        .device("Yard contact", CONTACT, device -> device.room("Passage").on("Yard door"))
        .device("Office contact", CONTACT, device -> device.room("Office").on("Office door"))
        .device("Passage motion", MOTION, device -> device.room("Passage"))
        .device("Office motion", MOTION, device -> device.room("Office"))
        .device("Store motion", MOTION, device -> device.room("Store"))
        .device("Office keypad", KEYPAD, device -> device.room("Office"))
        .zone(1, "Yard door", ENTRY_EXIT, zone -> zone.device("Yard contact"));
  }
}
