package keenward.files.plan;

import static keenward.files.shape.Field.optional;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.DeviceType;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Fact;
import keenward.core.plan.MagnetFit;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import keenward.core.quantities.Level;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.Shapes;

/** Fitted devices. */
final class DeviceSection {

  static final Field<String> TYPE =
      optional(
          "type",
          Shapes.reference("a device type", "/types/*"),
          "wide motion",
          "Its type; what the device states itself comes before it.");
  static final Field<Fact<String>> ROOM =
      optional("room", Common.room().orUnknown(), "Shop", "Room it is in.");
  static final Field<Fact<String>> OPENING =
      optional("opening", Common.opening().orUnknown(), "Shop door", "Opening that it watches.");
  static final Field<Fact<List<BigDecimal>>> AT =
      optional(
          "at",
          Common.coordinates().orUnknown(),
          "[5.8, 4.8]",
          "Where it is, in the unit of the floor of its room.");
  static final Field<Fact<List<BigDecimal>>> ENDS_AT =
      optional(
          "ends at",
          Common.coordinates().orUnknown(),
          "[0.2, 4.8]",
          "For a beam: where its other end is.");
  static final Field<Fact<Length>> HEIGHT =
      optional("height", Common.length(), "2.3 m", "Mounting height.");
  static final Field<Fact<Angle>> BEARING =
      optional(
          "bearing",
          Shapes.quantity(Angle::parse, Angle.units()).orUnknown(),
          "225 deg",
          "Direction in which it looks, clockwise from the top of the plan.");
  static final Field<Fact<Length>> MAGNET_GAP =
      optional("gap", Common.length(), "6 mm", "Gap between the two with the leaf shut.");
  static final Field<Fact<Length>> MAGNET_FROM_HINGE =
      optional(
          "from hinge",
          Common.length(),
          "0.8 m",
          "How far along the leaf from its hinge; of no matter for what slides or rolls.");
  static final MapShape MAGNET_SHAPE =
      MapShape.of(
          "magnet",
          "How a contact and its magnet sit: the magnet on the moving part, the contact on the frame.",
          MAGNET_GAP,
          MAGNET_FROM_HINGE);
  static final Field<Fact<MagnetFit>> MAGNET =
      optional(
          "magnet",
          MAGNET_SHAPE.as(DeviceSection::magnet).orUnknown(),
          "",
          "For a magnetic contact: how it and its magnet sit.");
  static final Field<Fact<String>> SUPPLY =
      optional("supply", Common.supply().orUnknown(), "Main", "Supply that feeds it.");
  static final Field<Fact<String>> SERIAL =
      optional(
          "serial",
          Common.name(),
          "\"0114 2201\"",
          "Printed serial number, as text: leading zeros stay.");
  static final Field<Fact<String>> KEYPAD =
      optional(
          "keypad",
          Common.name(),
          "words",
          "For a keypad: which keypad kind of the panel description it is.");
  static final Field<Fact<LocalDate>> FITTED =
      optional("fitted", Shapes.date().orUnknown(), "2026-10-02", "Date it was fitted.");
  static final Field<Fact<Level>> MEASURED_LEVEL =
      optional(
          "measured level",
          Shapes.quantity(Level::parse, Level.units()).orUnknown(),
          "-71 dBm",
          "For a radio device: the level at which the receiver or repeater that hears it best was seen to hear it.");
  static final Field<Fact<String>> NOTE = optional("note", Common.note(), "", "Anything else.");

  static final MapShape SHAPE =
      MapShape.of(
              "device",
              "One fitted device. Its kind is stated here or by its type.",
              TYPE,
              Traits.KIND,
              ROOM,
              OPENING,
              AT,
              ENDS_AT,
              HEIGHT,
              BEARING,
              MAGNET,
              SUPPLY,
              SERIAL,
              KEYPAD,
              Traits.WIRING,
              Traits.INPUTS,
              Traits.STANDBY_CURRENT,
              Traits.ALARM_CURRENT,
              Traits.ALARM_TIME,
              Traits.MINIMUM_VOLTAGE,
              Traits.COVERAGE,
              Traits.CELL_LIFE,
              Traits.REPLACE_AFTER,
              Traits.SECURITY_GRADE,
              Traits.SENSITIVITY,
              Traits.FREQUENCY,
              Traits.RADIO_POWER,
              Traits.CHECK_IN,
              Traits.LATCHING,
              Traits.SOUND,
              Traits.GAPS,
              Traits.LOAD,
              FITTED,
              MEASURED_LEVEL,
              NOTE)
          .example(
              """
              devices:
                Shop door contact: { type: slim radio contact, room: Shop, opening: Shop door, magnet: { gap: 6 mm, from hinge: 0.8 m }, serial: "0114 2201", fitted: 2026-10-02 }
                Shop motion: { kind: motion, wiring: wired, room: Shop, at: [5.8, 4.8], height: 2.3 m, bearing: 225 deg, standby current: unknown }
              types:
                slim radio contact: { kind: contact, wiring: radio, inputs: [contact, terminals, lid] }
              floors:
                Ground:
                  rooms: { Shop: { use: shop } }
                  openings: { Shop door: { kind: door, between: [Shop, outside] } }
              """);

  private DeviceSection() {}

  private static MagnetFit magnet(Fields fields) {
    return new MagnetFit(fields.fact(MAGNET_GAP), fields.fact(MAGNET_FROM_HINGE));
  }

  static Device bind(
      String name,
      Fields fields,
      Map<String, DeviceType> types,
      Map<String, DrawingUnit> unitOfRoom) {
    Fact<String> type = fields.given(TYPE);
    DeviceTraits ofType =
        type.find().map(types::get).map(DeviceType::traits).orElseGet(DeviceTraits::none);
    Fact<String> room = fields.fact(ROOM);
    DrawingUnit unit = room.find().map(unitOfRoom::get).orElse(DrawingUnit.METRES);
    return new Device(
        name,
        type,
        Traits.bind(fields).over(ofType),
        room,
        fields.fact(OPENING),
        fields.fact(AT).map(coordinates -> Common.point(coordinates, unit)),
        fields.fact(ENDS_AT).map(coordinates -> Common.point(coordinates, unit)),
        fields.fact(HEIGHT),
        fields.fact(BEARING),
        fields.fact(MAGNET),
        fields.fact(SUPPLY),
        fields.fact(SERIAL),
        fields.fact(KEYPAD),
        fields.fact(FITTED),
        fields.fact(MEASURED_LEVEL),
        fields.fact(NOTE));
  }
}
