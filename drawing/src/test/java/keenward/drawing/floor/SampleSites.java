package keenward.drawing.floor;

import keenward.core.plan.DeviceKind;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Fact;
import keenward.core.plan.Hinge;
import keenward.core.plan.Material;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Swing;
import keenward.core.plan.ZoneResponse;

/** Invented sites to draw. */
final class SampleSites {

  private SampleSites() {}

  /** A bakery with a flat above: two floors, eleven rooms, wired and wireless, 26 zones. */
  static SitePlan bakery() {
    PlanSketch sketch = new PlanSketch("Lock Street Bakery");
    bakeryGround(sketch);
    bakeryFlat(sketch);
    sketch
        .supply("Main", "Flour store")
        .panel("Flour store")
        .zone(1, "Yard door", ZoneResponse.ENTRY_EXIT, "Yard door contact")
        .zone(2, "Passage", ZoneResponse.FOLLOWER, "Passage motion")
        .zone(3, "Shop door", ZoneResponse.PERIMETER, "Shop door contact")
        .zone(4, "Shop window", ZoneResponse.PERIMETER, "Shop pane")
        .zone(5, "Shop motion", ZoneResponse.INSTANT, "Shop motion")
        .zone(6, "Office window", ZoneResponse.PERIMETER, "Office window contact")
        .zone(7, "Office", ZoneResponse.INSTANT, "Office motion")
        .zone(8, "Bakehouse", ZoneResponse.FOLLOWER, "Bakehouse motion")
        .zone(9, "Bakehouse win", ZoneResponse.PERIMETER, "Bakehouse window contact")
        .zone(10, "Flour hatch", ZoneResponse.PERIMETER, "Flour hatch contact")
        .zone(11, "Counter", ZoneResponse.HOLD_UP, "Counter button")
        .zone(12, "Cold store", ZoneResponse.TECHNICAL, "Cold store probe")
        .zone(13, "Safe", ZoneResponse.TWENTY_FOUR_HOUR, "Safe shock")
        .zone(14, "Panel lid", ZoneResponse.TAMPER, "Panel lid")
        .zone(15, "Hall door", ZoneResponse.ENTRY_EXIT, "Hall door contact")
        .zone(16, "Stair motion", ZoneResponse.FOLLOWER, "Stair motion")
        .zone(17, "Hall inner door", ZoneResponse.PERIMETER, "Hall inner contact")
        .zone(18, "Living window", ZoneResponse.PERIMETER, "Living window contact")
        .zone(19, "Kitchen window", ZoneResponse.PERIMETER, "Living window contact")
        .zone(20, "Landing", ZoneResponse.FOLLOWER, "Landing motion")
        .zone(21, "Bedroom smoke", ZoneResponse.FIRE, "Bedroom smoke")
        .zone(22, "Back smoke", ZoneResponse.FIRE, "Back smoke")
        .zone(23, "Landing smoke", ZoneResponse.FIRE, "Landing smoke")
        .zone(24, "Landing CO", ZoneResponse.CARBON_MONOXIDE, "Landing gas")
        .zone(25, "Stair smoke", ZoneResponse.FIRE, "Stair smoke")
        .zone(26, "Oven heat", ZoneResponse.FIRE, "Oven heat");
    return sketch.plan();
  }

  private static void bakeryGround(PlanSketch sketch) {
    sketch
        .room("Shop", RoomUse.SHOP, 0, 0, 6, 0, 6, 5, 0, 5)
        .room("Stair hall", RoomUse.STAIRS, 6, 0, 7.8, 0, 7.8, 5, 6, 5)
        .room("Office", RoomUse.OFFICE, 7.8, 0, 11, 0, 11, 5, 7.8, 5)
        .room("Bakehouse", RoomUse.WORKSHOP, 0, 5, 6, 5, 6, 10.4, 0, 10.4)
        .room("Passage", RoomUse.HALL, 6, 5, 11, 5, 11, 6.5, 6, 6.5)
        .room("Cold store", RoomUse.COLD_STORE, 6, 6.5, 8.2, 6.5, 8.2, 10.4, 6, 10.4)
        .room("Flour store", RoomUse.STORE, 8.2, 6.5, 11, 6.5, 11, 10.4, 8.2, 10.4)
        .wall("Shop", "Bakehouse", Material.PLASTERBOARD)
        .wall("Cold store", "Bakehouse", Material.INSULATED_PANEL)
        .wall("Cold store", "Passage", Material.INSULATED_PANEL)
        .wall("Cold store", "Flour store", Material.INSULATED_PANEL)
        .wall("Office", "Passage", Material.PLASTERBOARD)
        .opening(
            "Shop door",
            OpeningKind.DOUBLE_DOOR,
            "Shop",
            "outside",
            1,
            3.8,
            1.5,
            Fact.missing(),
            Fact.of(Swing.IN))
        .opening("Shop window", OpeningKind.FIXED_WINDOW, "Shop", "outside", 1, 0.6, 2.4)
        .door("Shop to bakehouse", "Shop", "Bakehouse", 1, 1, Hinge.LEFT, Swing.IN)
        .door("Hall door", "Stair hall", "outside", 1, 0.45, Hinge.LEFT, Swing.IN)
        .door("Hall inner door", "Stair hall", "Passage", 1, 0.45, Hinge.RIGHT, Swing.IN)
        .door("Office door", "Office", "Passage", 1, 1.2, Hinge.LEFT, Swing.IN)
        .opening("Office window", OpeningKind.WINDOW, "Office", "outside", 1, 1, 1.2)
        .door("Bakehouse door", "Bakehouse", "Passage", 1, 0.3, Hinge.LEFT, Swing.IN)
        .opening("Bakehouse window", OpeningKind.WINDOW, "Bakehouse", "outside", 1, 2, 1.5)
        .opening(
            "Cold store door", OpeningKind.SLIDING_DOOR, "Cold store", "Bakehouse", 1, 1.2, 1.2)
        .door("Flour store door", "Flour store", "Passage", 1, 1, Hinge.RIGHT, Swing.IN)
        .opening("Flour hatch", OpeningKind.ROLLER_SHUTTER, "Flour store", "outside", 2, 0.5, 1.8)
        .door("Yard door", "Passage", "outside", 1, 0.3, Hinge.LEFT, Swing.IN)
        .furniture("Counter", 1.2, 2.8, 4.3, 2.8, 4.3, 3.4, 1.2, 3.4)
        .furniture("Deck oven", 0.3, 8, 2.4, 8, 2.4, 10.1, 0.3, 10.1)
        .furniture("Work table", 3, 6.7, 5.2, 6.7, 5.2, 7.9, 3, 7.9)
        .stair("Main stair", "Stair hall", "Landing")
        .floor("Ground", DrawingUnit.METRES)
        .device("Yard door contact", DeviceKind.CONTACT, "Passage", "Yard door")
        .device("Passage motion", DeviceKind.MOTION, "Passage", 6.2, 6.3, 120)
        .device("Shop door contact", DeviceKind.CONTACT, "Shop", "Shop door")
        .device("Shop pane", DeviceKind.GLASS_BREAK, "Shop", 2.4, 4.8, 180)
        .device("Shop motion", DeviceKind.MOTION, "Shop", 0.2, 4.7, 135)
        .device("Office window contact", DeviceKind.CONTACT, "Office", "Office window")
        .device("Office motion", DeviceKind.DUAL_MOTION, "Office", 10.8, 4.7, 225)
        .device("Bakehouse motion", DeviceKind.MOTION, "Bakehouse", 0.2, 5.2, 45)
        .device("Bakehouse window contact", DeviceKind.CONTACT, "Bakehouse", "Bakehouse window")
        .device("Flour hatch contact", DeviceKind.CONTACT, "Flour store", "Flour hatch")
        .device("Counter button", DeviceKind.HOLD_UP_BUTTON, "Shop", 2.7, 3.5)
        .device("Cold store probe", DeviceKind.TEMPERATURE, "Cold store", 7.1, 10)
        .device("Safe shock", DeviceKind.SHOCK, "Office", 8.2, 4.6)
        .device("Panel lid", DeviceKind.LID, "Flour store", 10.5, 6.8)
        .device("Hall door contact", DeviceKind.CONTACT, "Stair hall", "Hall door")
        .device("Stair motion", DeviceKind.MOTION, "Stair hall", 7.6, 4.7, 200)
        .device("Hall inner contact", DeviceKind.CONTACT, "Stair hall", "Hall inner door")
        .device("Stair smoke", DeviceKind.SMOKE, "Stair hall", 6.9, 2.5)
        .device("Oven heat", DeviceKind.HEAT, "Bakehouse", 3, 6.1)
        .device("Passage keypad", DeviceKind.KEYPAD, "Passage", 9.2, 5.1)
        .device("Radio receiver", DeviceKind.RECEIVER, "Stair hall", 7.7, 1)
        .device("Communicator", DeviceKind.COMMUNICATOR, "Flour store")
        .device("Front siren", DeviceKind.SIREN, "Shop", 5.2, -0.1);
  }

  private static void bakeryFlat(PlanSketch sketch) {
    sketch
        .room("Living", RoomUse.LIVING, 0, 0, 6, 0, 6, 5, 0, 5)
        .room("Landing", RoomUse.LANDING, 6, 0, 7.8, 0, 7.8, 5, 9.2, 5, 9.2, 6.2, 6, 6.2)
        .room("Bedroom", RoomUse.BEDROOM, 7.8, 0, 11, 0, 11, 5, 7.8, 5)
        .room("Kitchen", RoomUse.KITCHEN, 0, 5, 6, 5, 6, 10.4, 0, 10.4)
        .room("Bathroom", RoomUse.BATHROOM, 6, 6.2, 8.2, 6.2, 8.2, 10.4, 6, 10.4)
        .room(
            "Back bedroom", RoomUse.BEDROOM, 9.2, 5, 11, 5, 11, 10.4, 8.2, 10.4, 8.2, 6.2, 9.2, 6.2)
        .door("Living door", "Living", "Landing", 1, 3, Hinge.LEFT, Swing.IN)
        .opening("Living window", OpeningKind.WINDOW, "Living", "outside", 1, 1.8, 2.4)
        .opening("Kitchen way", OpeningKind.DOORWAY, "Living", "Kitchen", 1, 1.2, 0.9)
        .opening("Kitchen window", OpeningKind.WINDOW, "Kitchen", "outside", 1, 1.5, 1.5)
        .door("Bedroom door", "Bedroom", "Landing", 2, 0.9, Hinge.RIGHT, Swing.IN)
        .opening("Bedroom window", OpeningKind.WINDOW, "Bedroom", "outside", 1, 1, 1.2)
        .door("Bathroom door", "Bathroom", "Landing", 1, 0.6, Hinge.LEFT, Swing.IN)
        .door("Back bedroom door", "Back bedroom", "Landing", 2, 0.15, Hinge.LEFT, Swing.IN)
        .opening("Back bedroom window", OpeningKind.WINDOW, "Back bedroom", "outside", 1, 1.8, 1.2)
        .floor("Upper", DrawingUnit.METRES)
        .device("Living window contact", DeviceKind.CONTACT, "Living", "Living window")
        .device("Landing motion", DeviceKind.MOTION, "Landing", 6.2, 5.9, 160)
        .device("Bedroom smoke", DeviceKind.SMOKE, "Bedroom", 9.4, 2.5)
        .device("Back smoke", DeviceKind.SMOKE, "Back bedroom", 9.7, 8)
        .device("Landing smoke", DeviceKind.SMOKE, "Landing", 6.9, 3.6)
        .device("Landing gas", DeviceKind.CARBON_MONOXIDE_DETECTOR, "Landing", 6.2, 2.4)
        .device("Landing keypad", DeviceKind.KEYPAD, "Landing", 6.1, 0.9)
        .device("Landing sounder", DeviceKind.SOUNDER, "Landing", 7.7, 2.7);
  }

  /**
   * A boathouse with slanted walls and every kind of opening, wall and symbol that the bakery
   * lacks.
   */
  static SitePlan boathouse() {
    return new PlanSketch("Weir End Boathouse")
        .room("Boat bay", RoomUse.GARAGE, 0, 0, 12, 0, 14, 3, 14, 8, 0, 8)
        .room("Workshop", RoomUse.WORKSHOP, 0, 8, 4.5, 8, 4.5, 13, 0, 13)
        .room("Changing room", RoomUse.CHANGING_ROOM, 4.5, 8, 9, 8, 9, 13, 4.5, 13)
        .room("Club room & bar", RoomUse.CLUBROOM, 9, 8, 14, 8, 17, 10.5, 14, 14, 9, 13)
        .room("Bin", RoomUse.OTHER, 14, 7.3, 14.7, 7.3, 14.7, 8, 14, 8)
        .wall("Workshop", "Changing room", Material.METAL)
        .wall("Changing room", "Club room & bar", Material.GLASS)
        .lowWall("Boat bay", "Workshop")
        .opening("Slipway shutter", OpeningKind.ROLLER_SHUTTER, "Boat bay", "outside", 1, 1, 5)
        .opening(
            "Side gate",
            OpeningKind.GATE,
            "Boat bay",
            "outside",
            2,
            0.8,
            1.8,
            Fact.of(Hinge.LEFT),
            Fact.of(Swing.OUT))
        .opening("Oar hatch", OpeningKind.HATCH, "Boat bay", "outside", 3, 1, 1)
        .opening("Roof light", OpeningKind.ROOF_WINDOW, "Workshop", "outside", 1, 1, 1.4)
        .opening("Workshop door", OpeningKind.DOOR, "Workshop", "Boat bay", 1, 1, 0.9)
        .opening("River window", OpeningKind.FIXED_WINDOW, "Club room & bar", "outside", 2, 0.6, 3)
        .opening("Terrace door", OpeningKind.SLIDING_DOOR, "Club room & bar", "outside", 3, 1, 2.4)
        .openingWithoutPlace("Cat flap", OpeningKind.DOOR, "Club room & bar", "outside")
        .furniture("Rack", 1, 1.2, 11, 1.2, 11, 2.2, 1, 2.2)
        .furniture("Bar", 11, 9, 12.8, 9, 12.8, 9.6, 11, 9.6)
        .floor("River floor", DrawingUnit.FEET)
        .device("Curtain", DeviceKind.CURTAIN, "Boat bay", 0.2, 7.8, 120)
        .device("Beam", DeviceKind.BEAM, "Boat bay", 13.8, 7.6, 270)
        .device("Shutter contact", DeviceKind.CONTACT, "Boat bay", "Slipway shutter")
        .device("Gate contact", DeviceKind.CONTACT, "Boat bay", "Side gate")
        .device("Call point", DeviceKind.CALL_POINT, "Club room & bar", 9.3, 12.6)
        .device("Help button", DeviceKind.MEDICAL_BUTTON, "Club room & bar", 11.9, 9.3)
        .device("Flood", DeviceKind.WATER, "Workshop", 4.2, 8.4)
        .device("Arming key", DeviceKind.KEY_SWITCH_CONTACT, "Boat bay", 13.6, 3.2)
        .device("Strobe", DeviceKind.STROBE, "Boat bay", -0.1, 4)
        .device("Expander", DeviceKind.EXPANDER, "Workshop")
        .device("Repeater", DeviceKind.REPEATER, "Changing room")
        .device("Relay", DeviceKind.RELAY, "Workshop")
        .device("Bin lid", DeviceKind.LID, "Bin", 14.35, 7.6)
        .device("Fob", DeviceKind.FOB, "Bin")
        .panel("Workshop")
        .zone(1, "Shutter", ZoneResponse.ENTRY_EXIT, "Shutter contact")
        .zone(2, "Gate", ZoneResponse.PERIMETER, "Gate contact")
        .zone(3, "Bay curtain", ZoneResponse.INSTANT, "Curtain")
        .zone(4, "Bay beam", ZoneResponse.INSTANT, "Beam")
        .zone(5, "Call point", ZoneResponse.FIRE, "Call point")
        .zone(6, "Help", ZoneResponse.MEDICAL, "Help button")
        .zone(7, "Flood", ZoneResponse.TECHNICAL, "Flood")
        .zone(8, "Key", ZoneResponse.KEY_SWITCH, "Arming key")
        .zone(9, "Bin", ZoneResponse.TAMPER, "Bin lid")
        .zone(10, "Bar motion", ZoneResponse.INSTANT, DeviceKind.MOTION)
        .plan();
  }
}
